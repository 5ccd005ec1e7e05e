import { FigureLinks } from '../../_marks/figure-links.tsx'
import { Blank, Pick, type Asking } from './blank.tsx'
import type { Answered } from './answers.ts'
import { metals, type NumberName, type WarmMetal } from './fields.ts'
import { airIds, figuresOf, metalIds, packIds, waitIds, type PageFigures } from './figures.ts'
import { Question } from './question.tsx'
import style from './climate.module.css'

const metalWords: Readonly<Record<WarmMetal, string>> = {
  iron: 'iron',
  'copper-alloy': 'copper alloy',
  silver: 'silver',
  lead: 'lead',
}

const plateNames: readonly NumberName[] = ['startC', 'thicknessMm']
const packNames: readonly NumberName[] = [
  'startC',
  'lengthCm',
  'widthCm',
  'heightCm',
  'paddingMm',
  'metalKg',
  'packingKg',
]

interface Props {
  readonly asking: Asking
  readonly answer: Answered
  readonly figures: PageFigures
}

/** Bare or packed: how long until nothing gathers on it, and until it may be opened. */
export function QuestionWarm({ asking, answer, figures }: Props) {
  const { typed, onType } = asking
  const packed = typed.brought !== 'plate'
  const metal = metals.find((one) => one === typed.metal) ?? 'iron'
  const pickMetal = <Pick name="metal" label="Metal" words={metalWords} asking={asking} />
  return (
    <Question
      id="warm"
      title="How long until it is warm?"
      names={packed ? packNames : plateNames}
      asking={asking}
      answer={answer}
      sentence={
        <>
          <fieldset className={`choices ${style.beside}`}>
            <legend>What is brought into this room?</legend>
            {(
              [
                ['pack', 'A closed pack'],
                ['plate', 'A bare find'],
              ] as const
            ).map(([value, words]) => (
              <label key={value} className="tall">
                <input
                  type="radio"
                  name="brought"
                  value={value}
                  checked={packed === (value === 'pack')}
                  onChange={() => onType('brought', value)}
                />
                {words}
              </label>
            ))}
          </fieldset>
          {packed ? (
            <p className={style.sentence}>
              A pack of <Blank name="lengthCm" asking={asking} /> by <Blank name="widthCm" asking={asking} />{' '}
              by <Blank name="heightCm" asking={asking} />, with <Blank name="paddingMm" asking={asking} /> of
              foam all round, holds <Blank name="metalKg" asking={asking} /> of {pickMetal} and{' '}
              <Blank name="packingKg" asking={asking} /> of packing and gel. It comes in at{' '}
              <Blank name="startC" asking={asking} />.
            </p>
          ) : (
            <p className={style.sentence}>
              A plate of {pickMetal}, <Blank name="thicknessMm" asking={asking} /> thick, comes in at{' '}
              <Blank name="startC" asking={asking} />.
            </p>
          )}
        </>
      }
    >
      <FigureLinks says="How long others wait" figures={figuresOf(figures, waitIds)} />
      <FigureLinks
        says="What it is reckoned with"
        figures={figuresOf(figures, [...metalIds[metal], ...airIds, ...(packed ? packIds : [])])}
      />
    </Question>
  )
}
