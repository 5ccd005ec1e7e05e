import { useRef, useState } from 'react'
import { useRouter } from 'next/navigation'
import type { ImportLine } from './import-line.ts'
import type { Summary } from './summary.ts'

export type ImportState =
  | { readonly at: 'choosing' | 'checking' }
  | { readonly at: 'refused'; readonly says: string }
  | { readonly at: 'checked' | 'done'; readonly summary: Summary }
  | { readonly at: 'committing'; readonly done: number; readonly total: number; readonly since: number }

interface Chosen {
  readonly file: File
  readonly project: string
  readonly name: string
}

const unreached = 'The server could not be reached, or broke off. Nothing of the file was kept; try again.'

/** The file stays in the browser between the dry run and the import, so that what was looked at is what is kept. */
export function useImport() {
  const [state, setState] = useState<ImportState>({ at: 'choosing' })
  const chosen = useRef<Chosen | null>(null)
  const router = useRouter()

  const check = async (wanted: Chosen) => {
    setState({ at: 'checking' })
    try {
      const answer = await fetch('/import/check', { method: 'POST', body: bodyOf(wanted) })
      const line = (await answer.json()) as ImportLine
      if ('summary' in line) {
        chosen.current = { ...wanted, project: line.summary.projectId }
        setState({ at: 'checked', summary: line.summary })
      } else setState({ at: 'refused', says: 'says' in line ? line.says : unreached })
    } catch {
      setState({ at: 'refused', says: unreached })
    }
  }

  const commit = async () => {
    if (chosen.current === null) return
    const since = Date.now()
    setState({ at: 'committing', done: 0, total: 0, since })
    try {
      const answer = await fetch('/import/commit', { method: 'POST', body: bodyOf(chosen.current) })
      let end: ImportState = { at: 'refused', says: unreached }
      for await (const line of linesOf(answer)) {
        if ('done' in line) setState({ at: 'committing', done: line.done, total: line.total, since })
        else
          end = 'summary' in line ? { at: 'done', summary: line.summary } : { at: 'refused', says: line.says }
      }
      setState(end)
      router.refresh()
    } catch {
      setState({ at: 'refused', says: unreached })
    }
  }

  return { state, check, commit, again: () => setState({ at: 'choosing' }) }
}

function bodyOf({ file, project, name }: Chosen): FormData {
  const body = new FormData()
  body.set('file', file)
  body.set('project', project)
  body.set('name', name)
  return body
}

async function* linesOf(answer: Response): AsyncGenerator<ImportLine> {
  const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  while (reader !== undefined) {
    const { value, done } = await reader.read()
    const lines = (rest + (value ?? '')).split('\n')
    rest = done ? '' : (lines.pop() ?? '')
    for (const line of lines) if (line.trim() !== '') yield JSON.parse(line) as ImportLine
    if (done) return
  }
}
