import type { Metadata } from 'next'
import { Scroll } from '../../_frame/scroll.tsx'
import { bagSheet } from '../../../lib/papers/bag-sheet.ts'
import { doNowLines, findsWords } from '../../../lib/wording/do-now.ts'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'
import { ChooseFinds } from '../../_papers/choose-finds.tsx'
import { LabelCard } from '../../_papers/label-card.tsx'
import { SheetHead } from '../../_papers/sheet-head.tsx'
import { StopsLine } from '../../_papers/stops-line.tsx'
import paper from '../../_papers/paper.module.css'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { servicesHere } from '../../_server/services.ts'
import { chosenFinds } from '../chosen.ts'

export const metadata: Metadata = { title: 'Bag sheet' }

export default async function BagSheetPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const words = await asked(searchParams)
  const services = await servicesHere()
  const { project, bag, total } = await chosenFinds(words)
  const sheet = bagSheet(bag, services.knowledge)
  return (
    <>
      <SheetHead
        name="Bag sheet"
        project={project}
        today={services.today()}
        finds={bag.length}
        total={total}
      />
      <ChooseFinds words={words} />
      {bag.length === 0 && (
        <p>Say which finds the bag holds: by context, by box, or from a find’s own page.</p>
      )}
      <StopsLine
        stops={sheet.now.stops.map(({ caution, finds }) => ({
          about: findsWords(finds),
          text: caution.text,
          who: caution.who,
        }))}
      />
      {bag.length > 0 && (
        <>
          {sheet.contexts.length > 0 && <p>{`Context ${sheet.contexts.join(', ')}`}</p>}
          <dl className="stack">
            {doNowLines(sheet.now, services.knowledge).map(({ key, name, says }) => (
              <div key={key}>
                <dt>
                  <strong>{name}</strong>
                </dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
          <Scroll name="Finds of the bag">
            <table className="broad">
              <thead>
                <tr>
                  <th scope="col">Find</th>
                  <th scope="col">How soon</th>
                  <th scope="col">Keep</th>
                  <th scope="col">Pack</th>
                </tr>
              </thead>
              <tbody>
                {sheet.lines.map((line) => (
                  <tr key={line.find}>
                    <th scope="row">{line.words}</th>
                    <td>
                      <UrgencyMark urgency={line.urgency} />
                    </td>
                    <td>{line.keep}</td>
                    <td>{line.packing}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
          <section className="section" aria-labelledby="do">
            <h2 id="do">Do, in order</h2>
            <ol className="stack">
              {sheet.steps.map(({ text, by, finds }) => (
                <li key={text}>
                  <strong>{text}</strong> {`(${by})`}
                  <p className="small">
                    {finds.length === sheet.lines.length ? 'Every find' : finds.join(', ')}
                  </p>
                </li>
              ))}
            </ol>
          </section>
          <section className={paper.labelsPage} aria-labelledby="labels">
            <h2 id="labels">Labels</h2>
            <ul className={paper.labels}>
              {sheet.labels.map((label) => (
                <LabelCard
                  key={`${label.site} ${label.find}`}
                  label={label}
                  invented={project?.invented === true}
                />
              ))}
            </ul>
          </section>
        </>
      )}
    </>
  )
}
