import type { Convention } from '../../../lib/climate/saturation.ts'
import { Blank, type Asking } from './blank.tsx'
import type { Answered } from './answers.ts'
import { choiceFields } from './fields.ts'
import { Question } from './question.tsx'
import style from './climate.module.css'

const against: Readonly<Record<Convention, string>> = {
  water: 'liquid water, as loggers do',
  'ice-below-zero': 'ice, as tables for engineers do',
}

interface Props {
  readonly asking: Asking
  readonly answer: Answered
}

/** The reading of the room, on which the next three questions stand. */
export function QuestionRoom({ asking, answer }: Props) {
  const { typed, onType } = asking
  const convention = typed.convention === 'ice-below-zero' ? 'ice-below-zero' : 'water'
  return (
    <Question
      id="room"
      title="What does the air in the room hold?"
      names={['roomC', 'roomRh', 'pressureHpa']}
      asking={asking}
      answer={answer}
      sentence={
        <>
          <p className={style.sentence}>
            In the room it is <Blank name="roomC" asking={asking} /> and{' '}
            <Blank name="roomRh" asking={asking} /> relative humidity.
          </p>
          <details className={style.more}>
            <summary>Frost and air pressure</summary>
            <fieldset className="choices">
              <legend>Below 0 °C the relative humidity counts against</legend>
              {choiceFields.convention.map((one) => (
                <label key={one} className="tall">
                  <input
                    type="radio"
                    name="convention"
                    value={one}
                    checked={convention === one}
                    onChange={() => onType('convention', one)}
                  />
                  {against[one]}
                </label>
              ))}
            </fieldset>
            <p className={style.sentence}>
              The air pressure is <Blank name="pressureHpa" asking={asking} />.
            </p>
            <p className="soft small">It changes the mixing ratio alone.</p>
          </details>
        </>
      }
    />
  )
}
