'use client'

import { useSyncExternalStore, useState, useEffect } from 'react'
import type { Known } from '../../../lib/knowledge/knowledge.ts'
import type { WhatIfShown } from '../../../lib/services/show-what-if.ts'
import { drierMeans, gelMeans, leakMeans, triedWords } from '../../../lib/wording/what-if-asked.ts'
import { useSettledText } from '../climate/use-settled-text.ts'
import { headlineOf, WhatIfAnswer } from './answer.tsx'
import { queryOf, readChange, type Typed } from './asked-change.ts'
import { Dial } from './dial.tsx'
import { FilmQuestion } from './film-question.tsx'
import { useAnswer } from './use-answer.ts'
import style from './what-if.module.css'

export interface FilmWords {
  readonly id: string
  readonly says: string
  readonly known: Known
}

interface Props {
  readonly first: WhatIfShown
  readonly typedFirst: Typed
  readonly films: readonly FilmWords[]
}

const nothing = () => () => undefined

/** Questions on one side, the answer on the other; it follows while one types or slides. */
export function Questions({ first, typedFirst, films }: Props) {
  const [typed, setTyped] = useState(typedFirst)
  const live = useSyncExternalStore(
    nothing,
    () => true,
    () => false,
  )
  const place = { box: first.asked.box, room: first.asked.room }
  const { change, wrong } = readChange(typed)
  const query = queryOf(place, typed)
  const { answer: shown, state } = useAnswer(`/store/what-if/answer?${query}`, first)
  useEffect(
    () => window.history.replaceState(null, '', query === '' ? '/store/what-if' : `?${query}`),
    [query],
  )
  const headline = headlineOf(shown)
  const settled = useSettledText(headline)
  const dial = (name: keyof typeof wrong) => ({
    name,
    typed: typed[name],
    wrong: wrong[name],
    live,
    onType: (text: string) => setTyped((before) => ({ ...before, [name]: text })),
  })
  const one = first.box !== null
  return (
    <div className={style.whole}>
      <form
        className={style.asked}
        action="/store/what-if"
        aria-label="What if"
        onSubmit={(event) => event.preventDefault()}
      >
        {place.box !== undefined && <input type="hidden" name="box" value={place.box} />}
        {place.room !== undefined && <input type="hidden" name="room" value={place.room} />}
        <Dial
          {...dial('drier')}
          asks={
            one || place.room !== undefined ? 'What if the room were drier?' : 'What if the rooms were drier?'
          }
          before="Drier by"
          after="points of humidity"
          value={change.drierByPercent}
          means={drierMeans(change.drierByPercent, roomNow(first))}
        />
        <Dial
          {...dial('leak')}
          asks={one ? 'What if the box were tighter?' : 'What if the boxes were tighter?'}
          before="Letting in"
          after="% less air"
          value={change.leakLessPercent}
          means={leakMeans(change.leakLessPercent)}
        />
        <Dial
          {...dial('gel')}
          asks={one ? 'What if it held more gel?' : 'What if they held more gel?'}
          before="Holding"
          after="times as much gel"
          value={change.gelTimes}
          means={gelMeans(change.gelTimes, one ? (first.each[0]?.gelKg.now ?? null) : null)}
        />
        {first.packs > 0 && (
          <FilmQuestion
            films={films}
            typed={typed}
            onType={(name, text) => setTyped((before) => ({ ...before, [name]: text }))}
          />
        )}
        <noscript>
          <button className="button first">Reckon</button>
        </noscript>
      </form>
      <div className={style.headline} data-asking={state === 'asking' ? '' : undefined}>
        <p aria-hidden={live}>{headline}</p>
        <p role="status" className="visually-hidden">
          {live ? settled : ''}
        </p>
      </div>
      <div className={style.answer}>
        <h2 className="visually-hidden">What it buys</h2>
        <p className="print-only">{triedWords(shown.asked.change)}</p>
        {typeof state === 'object' && <p className="wrong">{state.says}</p>}
        <WhatIfAnswer shown={shown} />
      </div>
    </div>
  )
}

/** The one room's mean; null where there are several. */
function roomNow({ each, byRoom }: WhatIfShown): number | null {
  return byRoom.length > 1 ? null : (each[0]?.meanRhPercent.now ?? null)
}
