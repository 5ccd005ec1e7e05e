import { Invented } from './_marks/invented.tsx'
import { BenchToday, IntakeToday, StoreToday } from './_start/places-today.tsx'
import { Empty } from './_start/empty.tsx'
import { LoadDemo } from './_start/load-demo.tsx'
import { ProjectChooser } from './_start/project-chooser.tsx'
import { StopsToday } from './_start/stops-today.tsx'
import style from './_start/start.module.css'
import { personHere } from './_server/person.ts'
import { projectsHere } from './_server/project.ts'
import { orElsewhere, servicesHere } from './_server/services.ts'
import { dayWords } from '../lib/wording/day.ts'
import { countWords } from '../lib/wording/list.ts'

export default async function StartPage() {
  const services = await servicesHere()
  const { all, chosen } = await projectsHere()
  const person = await personHere()
  if (chosen === null) return <Empty known={person !== null} />
  const start = await orElsewhere(services.startPage(chosen.id))
  const stops = await orElsewhere(
    services.listFinds({ projectId: chosen.id, order: 'urgency', stopsOnly: true, limit: 500 }),
  )
  if (start.finds === 0) return <Empty known={person !== null} project={chosen} />
  return (
    <>
      <StopsToday stops={stops.finds} total={stops.total} invented={chosen.invented} />
      <header className="head">
        <h1>{dayWords(start.today)}</h1>
        <p className="lead">
          {`${chosen.name}, ${countWords(start.finds, 'find')}. What presses today, in each place.`}{' '}
          {chosen.invented && <Invented />}
        </p>
      </header>
      <div className={style.places}>
        <IntakeToday start={start} />
        <BenchToday start={start} />
        <StoreToday start={start} />
      </div>
      {all.length > 1 && <ProjectChooser projects={all} chosen={chosen.id} />}
      {!all.some(({ invented }) => invented) && <LoadDemo known={person !== null} />}
    </>
  )
}
