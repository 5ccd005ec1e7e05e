import { salts } from '../../../lib/climate/fixed-points.ts'
import { saltLabel } from '../../../lib/wording/climate-salts.ts'
import { FigureLinks } from '../../_marks/figure-links.tsx'
import { Blank, Pick, type Asking } from './blank.tsx'
import type { Answered } from './answers.ts'
import type { NumberName } from './fields.ts'
import { figuresOf, sensorIds, type PageFigures } from './figures.ts'
import { Question } from './question.tsx'
import style from './climate.module.css'

const saltWords: Readonly<Record<string, string>> = {
  ...Object.fromEntries(salts.map((salt) => [salt, saltLabel(salt).toLowerCase()])),
  none: 'no second salt',
}

interface Props {
  readonly asking: Asking
  readonly answer: Answered
  readonly figures: PageFigures
}

/** A logger held against one or two salts. */
export function QuestionSalts({ asking, answer, figures }: Props) {
  const two = asking.typed.secondSalt !== 'none'
  const names: readonly NumberName[] = [
    'saltC',
    'firstRead',
    ...(two ? (['secondRead'] as const) : []),
    'nowRead',
  ]
  return (
    <Question
      id="salts"
      title="What does my logger really read?"
      names={names}
      asking={asking}
      answer={answer}
      sentence={
        <p className={style.sentence}>
          At <Blank name="saltC" asking={asking} />, settled over a wet slurry of{' '}
          <Pick name="firstSalt" label="First salt" words={saltWords} asking={asking} /> it read{' '}
          <Blank name="firstRead" asking={asking} />
          {two ? ', and over ' : '; '}
          <Pick name="secondSalt" label="Second salt" words={saltWords} asking={asking} />
          {two && (
            <>
              {' '}
              it read <Blank name="secondRead" asking={asking} />
            </>
          )}
          . In the box it now reads <Blank name="nowRead" asking={asking} />.
        </p>
      }
    >
      <FigureLinks says="What is known of sensors" figures={figuresOf(figures, sensorIds)} />
    </Question>
  )
}
