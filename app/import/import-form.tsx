'use client'

import { useState, type DragEvent } from 'react'
import { Findings } from './findings.tsx'
import { Progress } from './progress.tsx'
import { useImport } from './use-import.ts'

interface Props {
  readonly projects: readonly { readonly id: string; readonly name: string }[]
  readonly chosen: string
}

export function ImportForm({ projects, chosen }: Props) {
  const { state, check, commit, again } = useImport()
  const [project, setProject] = useState(chosen !== '' ? chosen : (projects[0]?.id ?? ''))
  const [name, setName] = useState('')
  const [over, setOver] = useState(false)
  const take = (file: File | undefined) => file !== undefined && void check({ file, project, name })
  const onDrop = (event: DragEvent) => {
    event.preventDefault()
    setOver(false)
    take(event.dataTransfer.files[0])
  }
  if (state.at === 'committing') return <Progress done={state.done} total={state.total} since={state.since} />
  if (state.at === 'checked' || state.at === 'done') {
    return <Findings summary={state.summary} onCommit={() => void commit()} onAgain={again} />
  }
  const ready = project !== '' || name.trim() !== ''
  return (
    <form className="stack" onSubmit={(event) => event.preventDefault()}>
      {state.at === 'refused' && (
        <p role="alert" className="wrong">
          {state.says}
        </p>
      )}
      <div className="row">
        {projects.length > 0 && (
          <div className="field">
            <label htmlFor="project">Into the project</label>
            <select id="project" value={project} onChange={(event) => setProject(event.target.value)}>
              {projects.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
              <option value="">a new one</option>
            </select>
          </div>
        )}
        {project === '' && (
          <div className="field">
            <label htmlFor="name">Name of the new project</label>
            <input id="name" value={name} maxLength={120} onChange={(event) => setName(event.target.value)} />
          </div>
        )}
      </div>
      <div
        className="drop"
        data-over={over || undefined}
        onDragOver={(event) => {
          event.preventDefault()
          setOver(true)
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <label htmlFor="file">
          <strong>Choose a file</strong>, or drop it here
        </label>
        <input
          id="file"
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,.json,.jsonl,.ndjson"
          disabled={!ready || state.at === 'checking'}
          onChange={(event) => take(event.target.files?.[0])}
        />
        {!ready && <p className="soft">Name the project first.</p>}
      </div>
      <p role="status">
        {state.at === 'checking' ? 'Reading the file and planning it; nothing is kept yet …' : ''}
      </p>
    </form>
  )
}
