import type { WhatIfShown } from '../../../lib/services/show-what-if.ts'
import { boughtWords, lastsThenWords, upkeepWords } from '../../../lib/wording/what-if.ts'
import {
  careLines,
  firstFillingWords,
  leftOutLine,
  whatIfRestsLines,
} from '../../../lib/wording/what-if-rests.ts'
import { UpkeepBars } from './bars.tsx'
import { BoxesTable, RoomsTable, UpkeepTable } from './tables.tsx'

const boxesFirst = 12

/** The first thing to be read of an answer. */
export function headlineOf(shown: WhatIfShown): string {
  const { counted, whole } = shown
  if (counted === 0) return 'Nothing can be reckoned here.'
  return isTried(shown) ? boughtWords(whole) : upkeepWords(whole.before, counted)
}

export const isTried = ({ asked: { change } }: WhatIfShown): boolean =>
  change.drierByPercent !== 0 || change.leakLessPercent !== 0 || change.gelTimes !== 1 || change.film !== null

/** The answer below its first sentence: picture, tables, what is left out, what it rests on. */
export function WhatIfAnswer({ shown }: { readonly shown: WhatIfShown }) {
  const { counted, whole, byRoom, each, leftOut, moreGelKg, box } = shown
  const tried = isTried(shown)
  return (
    <>
      {counted > 0 && (
        <>
          {tried && box !== null && <p className="measure">{lastsThenWords(whole)}</p>}
          <UpkeepBars bought={whole} tried={tried} />
          {tried && Math.abs(moreGelKg) >= 0.005 && <p className="measure">{firstFillingWords(moreGelKg)}</p>}
          {tried && (
            <details>
              <summary>The same as a table</summary>
              <UpkeepTable bought={whole} />
            </details>
          )}
        </>
      )}
      {careLines(shown).map((line) => (
        <p key={line} className="measure">
          {line}
        </p>
      ))}
      {leftOut.length > 0 && (
        <section aria-labelledby="left-out" className="stack">
          <h3 id="left-out">{box === null ? 'Left out' : 'Cannot be reckoned'}</h3>
          <ul>
            {leftOut.map((left) => (
              <li key={left.because}>{leftOutLine(left)}</li>
            ))}
          </ul>
        </section>
      )}
      {counted > 0 && (
        <details>
          <summary>What this rests on</summary>
          {whatIfRestsLines(shown.restsOn).map((line) => (
            <p key={line} className="measure">
              {line}
            </p>
          ))}
        </details>
      )}
      {byRoom.length > 1 && <RoomsTable rooms={byRoom} />}
      {counted > 1 && (
        <BoxesTable
          caption={captionOf(shown, tried)}
          boxes={byRoom.length > 0 ? each.slice(0, boxesFirst) : each}
          tried={tried}
          rooms={byRoom.length > 1}
        />
      )}
    </>
  )
}

function captionOf({ counted, each, byRoom }: WhatIfShown, tried: boolean): string {
  const listed = byRoom.length > 0 ? Math.min(boxesFirst, counted) : each.length
  const first = tried ? 'where it saves most first' : 'those renewed most often first'
  return listed < counted ? `${listed} of ${counted} boxes, ${first}` : `Box by box, ${first}`
}
