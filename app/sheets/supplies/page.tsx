import type { Metadata } from 'next'
import { supplies } from '../../../lib/papers/supplies.ts'
import { findsWords } from '../../../lib/wording/do-now.ts'
import { supplyCount, supplyWords } from '../../../lib/wording/supplies.ts'
import { ChooseFinds } from '../../_papers/choose-finds.tsx'
import { SheetHead } from '../../_papers/sheet-head.tsx'
import paper from '../../_papers/paper.module.css'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { servicesHere } from '../../_server/services.ts'
import { chosenFinds } from '../chosen.ts'

export const metadata: Metadata = { title: 'Supplies list' }

export default async function SuppliesPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const words = await asked(searchParams)
  const services = await servicesHere()
  const { project, bag, total } = await chosenFinds(words)
  return (
    <>
      <SheetHead
        name="Supplies list"
        project={project}
        today={services.today()}
        finds={bag.length}
        total={total}
      />
      <ChooseFinds words={words} />
      {bag.length === 0 && (
        <p>Say which finds are to be packed: by context, by box, or by any word of the record.</p>
      )}
      {bag.length > 0 && (
        <>
          <p className="measure">
            Counted from the packing that is planned. How many boxes, how much gel and how much foam depend on
            sizes that are not all recorded: where it says “at least”, add what your boxes need.
          </p>
          <table>
            <thead>
              <tr>
                <th scope="col">Have</th>
                <th scope="col">What</th>
                <th scope="col">How many</th>
                <th scope="col">For</th>
              </tr>
            </thead>
            <tbody>
              {supplies(bag).map((supply) => (
                <tr key={`${supply.id} ${supplyWords(supply)}`}>
                  <td>
                    <span className={paper.tick} aria-hidden="true" />
                  </td>
                  <th scope="row">{supplyWords(supply)}</th>
                  <td>{supplyCount(supply)}</td>
                  <td>{findsWords(supply.finds)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </>
  )
}
