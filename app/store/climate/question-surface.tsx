import { Blank, type Asking } from './blank.tsx'
import type { Answers } from './answers.ts'
import type { PageFigures } from './figures.ts'
import { IronTable } from './iron-table.tsx'
import { Question } from './question.tsx'
import { RhLines } from './rh-lines.tsx'
import style from './climate.module.css'

interface Props {
  readonly asking: Asking
  readonly answer: Answers['surface']
  readonly figures: PageFigures
}

/** Something colder or warmer than the room, against dew and against what iron with chloride bears. */
export function QuestionSurface({ asking, answer, figures }: Props) {
  const stands = answer !== null && answer.refused === undefined ? answer : null
  const { rhPercent = 0 } = stands?.account.surface ?? {}
  return (
    <Question
      id="surface"
      title="What happens on something colder?"
      names={['surfaceC']}
      asking={asking}
      answer={answer}
      drawing={
        stands !== null && (
          <RhLines
            lines={[
              {
                name: 'the room',
                fromPercent: stands.account.asked.rhPercent,
                toPercent: stands.account.asked.rhPercent,
              },
              { name: 'the air at the surface', fromPercent: rhPercent, toPercent: rhPercent },
            ]}
          />
        )
      }
      sentence={
        <p className={style.sentence}>
          A wall, a pipe or a find in this room is at <Blank name="surfaceC" asking={asking} />.
        </p>
      }
    >
      {stands !== null && <IronTable ceilings={stands.iron} figures={figures} />}
    </Question>
  )
}
