import Link from 'next/link'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { Ask } from '../../_forms/ask.tsx'
import { AskForm } from '../../_forms/ask-form.tsx'
import { Cautions } from '../../_forms/cautions.tsx'
import { changeWater, moveFind, noteLid, placeLogger, readStrip, renewGel } from './act.ts'
import {
  gelQuestions,
  lidQuestions,
  loggerQuestions,
  moveQuestions,
  stripQuestions,
  waterQuestions,
} from './questions.ts'

interface Props {
  readonly shown: BoxShown
  readonly knowledge: Knowledge
  readonly serials: readonly string[]
  readonly known: boolean
}

/** What one did with the box, each as a few questions, with what to beware of beside them. */
export function Asks({ shown, knowledge, serials, known }: Props) {
  const { project, today, line } = shown
  const { box, tub } = line
  const hidden = { project: project.id, box: box.given.box, version: String(box.version) }
  const form = (id: string) => ({ id, hidden, submit: 'Keep this' })
  return (
    <section className="section no-print" aria-labelledby="asks">
      <h2 id="asks">What did you do?</h2>
      {!known && (
        <p>
          <Link href={`/person?back=/store/boxes/${box.id}`}>Say who you are</Link> first: every entry carries
          who made it.
        </p>
      )}
      <div>
        {tub === null ? (
          <>
            <Ask says="I renewed the gel">
              <AskForm {...form('gel')} action={renewGel} questions={gelQuestions(shown)} />
              <Cautions knowledge={knowledge} task="renew-gel" />
            </Ask>
            <Ask says="I looked at strip, gel and lid">
              <AskForm {...form('strip')} action={readStrip} questions={stripQuestions(today)} />
              <Cautions knowledge={knowledge} task="read-strip" />
            </Ask>
          </>
        ) : (
          <Ask says="I changed its water">
            <AskForm {...form('water')} action={changeWater} questions={waterQuestions(today)} />
            <Cautions knowledge={knowledge} task="open-tub" />
          </Ask>
        )}
        <Ask says="I opened it, or looked at its lid">
          <AskForm {...form('lid')} action={noteLid} questions={lidQuestions(today)} />
        </Ask>
        {shown.finds.length + shown.out.length > 0 && (
          <Ask says="I moved a find">
            <AskForm {...form('move')} action={moveFind} questions={moveQuestions(shown)} />
          </Ask>
        )}
        {serials.length > 0 && (
          <Ask says="I put a logger in, or took one away">
            <AskForm {...form('logger')} action={placeLogger} questions={loggerQuestions(today, serials)} />
          </Ask>
        )}
      </div>
      <p>
        <Link className="tall" href={`/store/boxes/${box.id}/edit`}>
          Mend what is written about this box
        </Link>
      </p>
    </section>
  )
}
