import { useRef, useState } from 'react'
import { useRouter } from 'next/navigation'
import type { LogKept } from '../../../../lib/services/keep-log.ts'
import type { LogFileRead } from '../../../../lib/services/read-log-file.ts'
import type { LogAnswer } from './log-answer.ts'
import type { LogSaid } from './received-log.ts'

/** One file on its way: the file itself stays in the browser, so that what was looked at is what is kept. */
export interface LogInHand {
  readonly id: number
  readonly name: string
  readonly said: LogSaid
  readonly read: LogFileRead | null
  readonly kept: LogKept | null
  readonly says: string | null
  readonly busy: 'reading' | 'keeping' | null
}

const nothingSaid: LogSaid = { answers: null, serials: {}, boxes: {} }
const unreached = 'The server could not be reached, or broke off. Nothing of the file was kept; try again.'

/** Files one after the other: read and told first, kept when somebody says so. */
export function useLogFiles(project: string) {
  const [files, setFiles] = useState<readonly LogInHand[]>([])
  const held = useRef(new Map<number, File>())
  const count = useRef(0)
  const router = useRouter()

  const change = (id: number, by: Partial<LogInHand>) =>
    setFiles((all) => all.map((one) => (one.id === id ? { ...one, ...by } : one)))

  const send = async (id: number, said: LogSaid, doing: 'check' | 'keep') => {
    const file = held.current.get(id)
    if (file === undefined) return
    change(id, { busy: doing === 'check' ? 'reading' : 'keeping', says: null, said })
    const body = new FormData()
    body.set('project', project)
    body.set('said', JSON.stringify(said))
    body.set('file', file)
    try {
      const response = await fetch(`/store/loggers/import/${doing}`, { method: 'POST', body })
      const answer = (await response.json()) as LogAnswer
      if ('read' in answer) change(id, { read: answer.read, busy: null })
      else if ('kept' in answer) {
        change(id, { kept: answer.kept, read: answer.kept.read, busy: null })
        router.refresh()
      } else change(id, { says: answer.says, busy: null })
    } catch {
      change(id, { says: unreached, busy: null })
    }
  }

  const take = async (chosen: readonly File[]) => {
    const fresh = chosen.map((file): LogInHand => {
      count.current += 1
      held.current.set(count.current, file)
      return {
        id: count.current,
        name: file.name,
        said: nothingSaid,
        read: null,
        kept: null,
        says: null,
        busy: 'reading',
      }
    })
    setFiles((all) => [...all, ...fresh])
    // One after the other: a large file takes all the room there is.
    for (const { id } of fresh) await send(id, nothingSaid, 'check')
  }

  const drop = (id: number) => {
    held.current.delete(id)
    setFiles((all) => all.filter((one) => one.id !== id))
  }
  return {
    files,
    take,
    drop,
    say: (id: number, said: LogSaid) => change(id, { said }),
    answer: (id: number, said: LogSaid) => send(id, said, 'check'),
    keep: (id: number, said: LogSaid) => send(id, said, 'keep'),
  }
}
