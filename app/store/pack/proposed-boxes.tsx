import Link from 'next/link'
import type { ProposedBox } from '../../../lib/boxes/pack-proposal.ts'
import type { StorePacking } from '../../../lib/services/pack-store.ts'
import { bandWords } from '../../../lib/wording/band.ts'
import { kilogramWords } from '../../../lib/wording/box-gel.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { BoxMark } from '../../_ruler/box-mark.tsx'
import { boxName } from './names.ts'
import style from './pack.module.css'

/** How each box would stand: with whom, in what humidity and why, how full, with how much gel. */
export function ProposedBoxes({ packing }: { readonly packing: StorePacking }) {
  const { boxes } = packing.proposal
  if (boxes.length === 0) return null
  return (
    <section className="section no-print" aria-labelledby="boxes">
      <h2 id="boxes">{`How ${countWords(boxes.length, 'box', 'boxes')} would stand`}</h2>
      <ul className={style.boxes}>
        {boxes.map((box) => (
          <BoxLine key={boxName(box)} box={box} packing={packing} />
        ))}
      </ul>
    </section>
  )
}

function BoxLine({ box, packing }: { readonly box: ProposedBox; readonly packing: StorePacking }) {
  const { findIds, band } = box
  const id = box.box.name === null ? undefined : packing.boxIds.get(box.box.name)
  const place = [box.box.room, box.box.shelf === '' ? '' : `shelf ${box.box.shelf}`].filter(
    (word) => word !== '',
  )
  return (
    <li className={style.box}>
      <span>
        {id === undefined ? (
          <strong>{boxName(box)}</strong>
        ) : (
          <Link className="tall" href={`/store/boxes/${id}`}>
            <strong>{boxName(box)}</strong>
          </Link>
        )}
        <span className="soft small"> {place.join(', ')}</span>
      </span>
      <span>{band !== null && <BoxMark needs={band} thought={null} seen={null} />}</span>
      <span>
        <p>{capital(saysOf(box, packing))}</p>
        <details>
          <summary className={style.fold}>{countWords(findIds.length, 'find')}</summary>
          <p>
            {findIds.map((findId, at) => (
              <span key={findId}>
                {at > 0 && ', '}
                <Link href={`/finds/${findId}`}>{packing.finds.get(findId)?.line.findNumber ?? findId}</Link>
              </span>
            ))}
          </p>
        </details>
      </span>
    </li>
  )
}

function saysOf(
  { band, decidedBy, filled, massKg, gelKg, dark }: ProposedBox,
  { finds }: StorePacking,
): string {
  const named = (id: string | null) => (id === null ? null : (finds.get(id)?.line.findNumber ?? null))
  const decides = [...new Set([named(decidedBy.high), named(decidedBy.low)])].filter((name) => name !== null)
  const air =
    band === null
      ? 'in water'
      : `${bandWords(band)}${decides.length === 0 ? '' : `, for ${decides.join(' and ')}`}`
  const gel =
    band === null ? '' : gelKg > 0 ? `; about ${kilogramWords(gelKg)} of gel a year` : '; no gel needed'
  const full = `${Math.round(filled * 100)} % full, ${kilogramWords(massKg)}`
  return `${air}${gel}; ${full}${dark ? '; keep it dark' : ''}.`
}
