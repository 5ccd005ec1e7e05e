import type { Storage } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { rulerOfStorage } from '../../lib/papers/ruler.ts'
import { temperatureWords } from '../../lib/wording/band.ts'
import { codeLabel } from '../../lib/wording/fact.ts'
import { keepSentence, wetOrDryWords } from '../../lib/wording/keep.ts'
import { HumidityRuler } from '../_ruler/humidity-ruler.tsx'
import { Lines } from './lines.tsx'
import style from './keeping.module.css'

interface Props {
  readonly storage: Storage
  readonly keptAtPercent: number | null
  readonly knowledge: Knowledge
}

/** How the find is kept: the ruler, what it says in words, what to do when the box leaves its band, and who decides. */
export function Keeping({ storage, keptAtPercent, knowledge }: Props) {
  const { conflict, interim, temperatureC } = storage
  return (
    <div className="stack">
      <p className={style.band}>
        <strong>{keepSentence(storage)}</strong> {storage.keep !== 'wet' && `${wetOrDryWords(storage.keep)}.`}
        {storage.precautionary && <span className="soft"> Partly to be safe, until you look.</span>}
      </p>
      {storage.keep !== 'wet' && <HumidityRuler ruler={rulerOfStorage(storage, keptAtPercent)} />}
      {interim !== null && (
        <Lines statements={[interim.says]} knowledge={knowledge} parts={storage.components.length} />
      )}
      <dl className={style.facts}>
        {(temperatureC.min !== null || temperatureC.max !== null) && (
          <div>
            <dt>Temperature</dt>
            <dd>{temperatureWords(temperatureC)}</dd>
          </div>
        )}
        {storage.light === 'dark' && (
          <div>
            <dt>Light</dt>
            <dd>keep it dark</dd>
          </div>
        )}
        {storage.air.length > 0 && (
          <div>
            <dt>Air</dt>
            <dd>{storage.air.map((code) => codeLabel(code, knowledge)).join('; ')}</dd>
          </div>
        )}
      </dl>
      {storage.act.length > 0 && (
        <div>
          <h3>When it leaves that</h3>
          <Lines
            statements={storage.act.map(({ says }) => says)}
            knowledge={knowledge}
            parts={storage.components.length}
          />
        </div>
      )}
      {conflict !== null && conflict.waysOut.length > 0 && (
        <div>
          <h3>Ways out, for a conservator to choose from</h3>
          <Lines statements={conflict.waysOut} knowledge={knowledge} parts={storage.components.length} />
        </div>
      )}
      <details className="no-print">
        <summary className={style.why}>Why so</summary>
        <Lines
          statements={storage.basis.filter(({ text, because }) => text !== '' || because !== '')}
          knowledge={knowledge}
          parts={storage.components.length}
        />
      </details>
    </div>
  )
}
