import Link from 'next/link'
import type { ProposedBox, ProposedMove } from '../../../lib/boxes/pack-proposal.ts'
import type { StorePacking } from '../../../lib/services/pack-store.ts'
import { heedLines } from '../../../lib/wording/packing-plan.ts'
import { Invented } from '../../_marks/invented.tsx'
import paper from '../../_papers/paper.module.css'
import { MovedButton } from './moved-button.tsx'
import { boxName, placeOf } from './names.ts'
import style from './pack.module.css'

const most = 1000

/** Who goes where, box by box as one walks the shelves; on paper with a square to tick. */
export function MovingList({ packing }: { readonly packing: StorePacking }) {
  const { proposal } = packing
  if (proposal.moves.length === 0) return null
  const shown = proposal.moves.slice(0, most)
  return (
    <section className="section" aria-labelledby="moves">
      <h2 id="moves">Moving list</h2>
      <p className="measure soft">
        In the order the boxes stand. Nothing is moved here: say of each find that it is there once you have
        carried it.
      </p>
      {[...Map.groupBy(shown, ({ from }) => from)].map(([from, moves]) => (
        <div key={from} className={style.group}>
          <h3>{from === null ? 'Out of no box' : <FromBox packing={packing} from={from} />}</h3>
          <ul className={style.moves}>
            {moves.map((move) => (
              <MoveLine key={move.findId} move={move} box={proposal.boxes[move.to]!} packing={packing} />
            ))}
          </ul>
        </div>
      ))}
      {proposal.moves.length > most && (
        <p className="wrong">{`and ${proposal.moves.length - most} more. Carry these first, then propose again.`}</p>
      )}
    </section>
  )
}

function FromBox({ packing, from }: { readonly packing: StorePacking; readonly from: string }) {
  const id = packing.boxIds.get(from)
  if (id === undefined) return `Out of ${from}, which is in no list`
  return (
    <>
      {'Out of '}
      <Link href={`/store/boxes/${id}`}>{from}</Link>
      <span className="soft">{placeOf(packing, from)}</span>
    </>
  )
}

interface LineProps {
  readonly move: ProposedMove
  readonly box: ProposedBox
  readonly packing: StorePacking
}

function MoveLine({ move, box, packing }: LineProps) {
  const find = packing.finds.get(move.findId)
  if (find === undefined) return null
  const { findNumber, object } = find.line
  const heed = heedLines(move.heed)
  const { shelf, room } = box.box
  return (
    <li className={style.move}>
      <span className={`print-only ${paper.tick}`} />
      <span>
        <Link className="tall" href={`/finds/${move.findId}`}>
          <strong className={style.number}>{findNumber}</strong>
          {` ${object}`}
        </Link>{' '}
        {packing.project.invented && <Invented quiet />}
      </span>
      <span>
        {'into '}
        <strong>{boxName(box)}</strong>
        <span className="soft">
          {[room, shelf === '' ? '' : `shelf ${shelf}`].filter(Boolean).map((word) => `, ${word}`)}
        </span>
        {heed.length > 0 && <span className={style.heed}>{heed.join(' ')}</span>}
      </span>
      <span className="no-print">
        {box.box.name === null ? (
          <span className="soft">a box to be had</span>
        ) : (
          <MovedButton findId={move.findId} find={findNumber} box={box.box.name} />
        )}
      </span>
    </li>
  )
}
