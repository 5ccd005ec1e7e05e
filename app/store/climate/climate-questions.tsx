'use client'

import { useState, type ReactNode } from 'react'
import { ironRows } from '../../../lib/wording/climate-iron.ts'
import { askedSentences } from '../../../lib/wording/climate-sentences.ts'
import { saltsOf, warmOf } from './answers-apart.ts'
import { AnswersTable } from './answers-table.tsx'
import { answersOf } from './answers.ts'
import type { Asking } from './blank.tsx'
import { startTyped } from './fields.ts'
import { figureOf, type PageFigures } from './figures.ts'
import { QuestionChange } from './question-change.tsx'
import { QuestionRoom } from './question-room.tsx'
import { QuestionSalts } from './question-salts.tsx'
import { QuestionSurface } from './question-surface.tsx'
import { QuestionWarm } from './question-warm.tsx'
import { readTyped } from './read-typed.ts'

interface Props {
  readonly figures: PageFigures
  /** What to beware of with jars of salt. */
  readonly saltCautions: ReactNode
}

/** All is reckoned here, in the browser: once the page stands it needs no network. */
export function ClimateQuestions({ figures, saltCautions }: Props) {
  const [typed, setTyped] = useState(startTyped)
  const read = readTyped(typed)
  const asking: Asking = {
    typed,
    wrong: read.wrong,
    onType: (name, text) => setTyped((before) => ({ ...before, [name]: text })),
  }
  const { room, change, surface } = answersOf(read, figures)
  const warm = warmOf(read, figures)
  const salts = saltsOf(read, figures)
  const asked = askedSentences(read.numbers, read.choices)
  return (
    <>
      <div className="stack no-print">
        <QuestionRoom asking={asking} answer={room} />
        <QuestionChange asking={asking} answer={change} />
        <QuestionSurface asking={asking} answer={surface} figures={figures} />
        <QuestionWarm asking={asking} answer={warm} figures={figures} />
        <QuestionSalts asking={asking} answer={salts} figures={figures} />
        {saltCautions}
      </div>
      <AnswersTable
        answers={[
          { title: 'room', asked: asked.room, answer: room },
          { title: 'change', asked: asked.change, answer: change },
          {
            title: 'surface',
            asked: asked.surface,
            answer: surface,
            more:
              surface !== null && surface.refused === undefined
                ? ironRows(surface.iron, (id) => figureOf(figures, id))
                : [],
          },
          { title: 'warm', asked: asked.warm, answer: warm },
          { title: 'salts', asked: asked.salts, answer: salts },
        ]}
      />
    </>
  )
}
