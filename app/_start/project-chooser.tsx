import type { Project } from '../../lib/services/kept.ts'
import { chooseProject } from '../_frame/actions.ts'
import { Invented } from '../_marks/invented.tsx'

export function ProjectChooser({
  projects,
  chosen,
}: {
  readonly projects: readonly Project[]
  readonly chosen: string
}) {
  return (
    <section className="section" aria-labelledby="projects">
      <h2 id="projects">Projects</h2>
      <form action={chooseProject} className="row">
        {projects.map(({ id, name, invented }) => (
          <button key={id} className="button" name="project" value={id} aria-pressed={id === chosen}>
            {name} {invented && <Invented />}
          </button>
        ))}
      </form>
    </section>
  )
}
