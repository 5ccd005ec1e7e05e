import { Blank, type Asking } from './blank.tsx'
import type { Answers } from './answers.ts'
import { Question } from './question.tsx'
import { RhLines, type RhLine } from './rh-lines.tsx'
import style from './climate.module.css'

interface Props {
  readonly asking: Asking
  readonly answer: Answers['change']
}

/** The room, a closed box and a box of gel, warmed or cooled. */
export function QuestionChange({ asking, answer }: Props) {
  return (
    <Question
      id="change"
      title="What if it gets warmer or colder?"
      names={['toC', 'gelRh']}
      asking={asking}
      answer={answer}
      drawing={answer !== null && answer.refused === undefined && <RhLines lines={linesOf(answer)} />}
      sentence={
        <p className={style.sentence}>
          The room goes to <Blank name="toC" asking={asking} />. A closed box in it with much dry gel stood at{' '}
          <Blank name="gelRh" asking={asking} />.
        </p>
      }
    />
  )
}

function linesOf({
  account,
  gel,
}: Extract<Answers['change'], { readonly account: unknown }>): readonly RhLine[] {
  const { asked, after } = account
  const at = (name: string, percent: number) => ({ name, fromPercent: percent, toPercent: percent })
  return [
    at('the room now', asked.rhPercent),
    ...(after === null
      ? []
      : [at('air that comes and goes', after.ventedPercent), at('a closed box', after.sealedPercent)]),
    ...(gel === null
      ? []
      : [{ name: 'with much dry gel', fromPercent: gel.lowPercent, toPercent: gel.highPercent }]),
  ]
}
