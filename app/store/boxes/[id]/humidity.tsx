import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { noOutlookWords } from '../../../../lib/wording/box-gel.ts'
import { outlookLines, restsOnLines } from '../../../../lib/wording/box-outlook.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { fanPicture } from '../../../../lib/papers/box-fan.ts'
import { FanChart } from '../../../_charts/fan-chart.tsx'
import type { Distribution } from '../../../_ruler/distribution.tsx'
import { HumidityRuler } from '../../../_ruler/humidity-ruler.tsx'
import { boxRuler } from '../../box-ruler.ts'

interface Props {
  readonly shown: BoxShown
  /** What its logger read; null where none did. */
  readonly distribution: Distribution | null
}

/** What the box must hold and what it holds, on one axis. */
export function Humidity({ shown, distribution }: Props) {
  const { line, finds } = shown
  const ruler = boxRuler(line, finds)
  return (
    <section className="section" aria-labelledby="humidity">
      <h2 id="humidity">Humidity</h2>
      {ruler.bars.length === 0 && <p>Nothing in it asks for a humidity.</p>}
      {(ruler.bars.length > 0 || distribution !== null) && (
        <HumidityRuler ruler={ruler} {...(distribution === null ? {} : { distribution })} />
      )}
      {line.newest === null && <p>Nobody and nothing has read it yet.</p>}
    </section>
  )
}

/** What the box is likely to do, and what that rests on; or why nothing can be told. */
export function Forecast({ shown }: { readonly shown: BoxShown }) {
  const { line, sightings, today } = shown
  const { outlook, noOutlook, box } = line
  if (noOutlook === 'tub') return null
  return (
    <section className="section" aria-labelledby="forecast">
      <h2 id="forecast">What it is likely to do</h2>
      {outlook === null ? (
        <p className="measure">
          {noOutlook === null ? 'Nothing can be told yet.' : noOutlookWords[noOutlook]}
        </p>
      ) : (
        <>
          <FanChart
            name={`box ${box.given.box}`}
            picture={fanPicture({ ...outlook, sightings, today })}
            summary={outlookLines(outlook, today)}
          />
          <details>
            <summary>What this rests on</summary>
            {restsOnLines(outlook).map((words) => (
              <p key={words} className="measure">
                {capital(words)}
              </p>
            ))}
            <p className="measure">
              Gel, leak and room are reckoned as one leak and one store of water; everything that was read of
              the box, strip or logger, narrows it. Gel is taken as evenly mixed and the box as one
              temperature.
            </p>
          </details>
        </>
      )}
    </section>
  )
}
