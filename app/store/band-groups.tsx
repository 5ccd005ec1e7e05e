import Link from 'next/link'
import type { BandCount } from '../../lib/services/find-query.ts'
import { bandWords } from '../../lib/wording/band.ts'
import { countWords } from '../../lib/wording/list.ts'
import { UrgencyMark } from '../_marks/urgency-mark.tsx'
import { RulerRow } from '../_ruler/small-rulers.tsx'
import { capital } from '../../lib/wording/capital.ts'
import style from './store.module.css'

/** Finds by the humidity they need: what could stand in the same climate. */
export function BandGroups({ bands }: { readonly bands: readonly BandCount[] }) {
  return (
    <section className="section" aria-labelledby="bands">
      <h2 id="bands">By the humidity they need</h2>
      <ul className={style.list}>
        {bands.map((group) => (
          <li key={group.band} className={style.line}>
            <Link className="tall" href={`/finds?band=${encodeURIComponent(group.band)}`}>
              <strong>{nameOf(group)}</strong>
            </Link>
            <span>{countWords(group.finds, 'find')}</span>
            <span>
              most pressing: <UrgencyMark urgency={group.mostPressing} />
            </span>
            {group.rhPercent !== null && (
              <RulerRow
                ruler={{
                  bars: [{ name: 'together', limit: group.rhPercent, preference: null }],
                  shared: group.rhPercent,
                  gap: null,
                  holding: null,
                  now: null,
                }}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

export function nameOf({ band, rhPercent }: Pick<BandCount, 'band' | 'rhPercent'>): string {
  if (band === 'wet') return 'Keep wet'
  if (band === 'conflict') return 'No one humidity suits it'
  return rhPercent === null ? 'We have no advice on its humidity' : capital(bandWords(rhPercent))
}
