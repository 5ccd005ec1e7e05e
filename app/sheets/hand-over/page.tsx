import type { Metadata } from 'next'
import { Scroll } from '../../_frame/scroll.tsx'
import { destinations, handOver } from '../../../lib/papers/hand-over.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'
import { ChooseFinds } from '../../_papers/choose-finds.tsx'
import { SheetHead } from '../../_papers/sheet-head.tsx'
import { SignBoxes } from '../../_papers/sign-boxes.tsx'
import { StopsLine } from '../../_papers/stops-line.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { personHere } from '../../_server/person.ts'
import { servicesHere } from '../../_server/services.ts'
import { chosenFinds } from '../chosen.ts'

export const metadata: Metadata = { title: 'Hand-over sheet' }

export default async function HandOverPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const words = await asked(searchParams)
  const services = await servicesHere()
  const { project, bag, total } = await chosenFinds(words)
  const to = destinations.find((one) => one === words['to']) ?? 'laboratory'
  const sheet = handOver(bag, to, services.knowledge)
  const person = await personHere()
  return (
    <>
      <SheetHead
        name={`Hand-over to the ${to}`}
        project={project}
        today={services.today()}
        finds={bag.length}
        total={total}
      />
      <ChooseFinds words={words}>
        {words['finds'] !== undefined && <input type="hidden" name="finds" value={words['finds']} />}
        <div className="field">
          <label htmlFor="to">Goes to</label>
          <select id="to" name="to" defaultValue={to}>
            {destinations.map((one) => (
              <option key={one} value={one}>{`the ${one}`}</option>
            ))}
          </select>
        </div>
      </ChooseFinds>
      {bag.length === 0 && (
        <p>Say which finds are handed over: by context, by box, or from a find’s own page.</p>
      )}
      <StopsLine stops={sheet.stops.map(({ find, text, who }) => ({ about: find, text, who }))} />
      {bag.length > 0 && (
        <>
          <Scroll name="What is handed over">
            <table className="broad">
              <thead>
                <tr>
                  <th scope="col">Find</th>
                  <th scope="col" className="number">
                    Pieces
                  </th>
                  <th scope="col">How soon</th>
                  <th scope="col">Keep, take care</th>
                  <th scope="col">{to === 'laboratory' ? 'Asked' : 'Packing and next look'}</th>
                </tr>
              </thead>
              <tbody>
                {sheet.lines.map((line) => (
                  <tr key={line.find}>
                    <th scope="row">{line.words}</th>
                    <td className="number">{line.pieces}</td>
                    <td>
                      <UrgencyMark urgency={line.urgency} />
                    </td>
                    <td>{[line.keep, line.careful].filter((text) => text !== '').join(' ')}</td>
                    <td>
                      {line.asked.map((text) => (
                        <p key={text}>{text}</p>
                      ))}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
          <p>{`${countWords(sheet.lines.length, 'find')}, ${countWords(sheet.pieces, 'piece')} in all. Counted by both before signing.`}</p>
          <SignBoxes giver={person?.name ?? ''} />
        </>
      )}
    </>
  )
}
