import type { PackAsked, PackMake } from '../../../lib/services/pack-store.ts'
import { numberWords } from '../../../lib/wording/band.ts'
import { moreName } from './pack-asked.ts'
import style from './pack.module.css'

interface Props {
  readonly asked: PackAsked
  readonly makes: readonly PackMake[]
}

/** From where on it is packed, and with what boxes beside those that are there. */
export function PackForm({ asked, makes }: Props) {
  const wanted = new Map(asked.more.map(({ like, count }) => [like, count]))
  return (
    <form className="stack no-print" aria-label="How to pack">
      <fieldset className="choices">
        <legend>Begin</legend>
        <label className="tall">
          <input
            type="radio"
            name="begin"
            value="as-it-stands"
            defaultChecked={asked.begin === 'as-it-stands'}
          />
          as it stands: who is well where it is stays
        </label>
        <label className="tall">
          <input type="radio" name="begin" value="afresh" defaultChecked={asked.begin === 'afresh'} />
          anew: everything may move, for the fewest boxes
        </label>
      </fieldset>
      {makes.length > 0 && (
        <details open={asked.more.length > 0}>
          <summary className={style.fold}>Boxes you could get</summary>
          <div className={style.makes}>
            {makes.map(({ like, model, kind, room, volumeL, boxes }) => {
              const id = `more-${like}`
              return (
                <div key={like} className="field">
                  <label
                    htmlFor={id}
                  >{`More of ${[model === '' ? kind : model, `${numberWords(volumeL)} l`].join(', ')}`}</label>
                  <span id={`${id}-hint`} className="hint">
                    {[room, boxes === 1 ? 'one is there' : `${boxes} are there`].filter(Boolean).join('; ')}
                  </span>
                  <input
                    id={id}
                    name={moreName(like)}
                    type="number"
                    min="0"
                    max="500"
                    inputMode="numeric"
                    aria-describedby={`${id}-hint`}
                    defaultValue={wanted.get(like) ?? ''}
                  />
                </div>
              )
            })}
          </div>
        </details>
      )}
      <label className="tall">
        <input type="checkbox" name="longer" value="1" defaultChecked={asked.longer} className={style.tick} />
        look longer for fewer boxes and less gel
      </label>
      <div className="row">
        <button className="button first">Propose</button>
      </div>
    </form>
  )
}
