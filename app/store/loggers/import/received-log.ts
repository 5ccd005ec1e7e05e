import { z } from 'zod'
import type { LogAnswers } from '../../../../lib/logger/read/log-answers.ts'
import type { LogToKeep } from '../../../../lib/services/keep-log.ts'
import { personHere, type Person } from '../../../_server/person.ts'

const column = z.object({
  column: z.number().int(),
  use: z.enum(['stamp', 'date', 'time', 'temperature', 'humidity', 'channel', 'not-read']),
  channel: z.string().max(120).optional(),
})
const answers = z.object({
  timeZone: z.string().max(60).nullable(),
  dateOrder: z.enum(['day-first', 'month-first', 'year-first']).nullable(),
  temperatureUnit: z.enum(['celsius', 'fahrenheit']).nullable(),
  humidityScale: z.enum(['percent', 'fraction']).nullable().optional(),
  columns: z.array(column).nullable().optional(),
})
const names = z.record(z.string().max(200), z.string().max(200))
const said = z.object({
  answers: answers.nullable(),
  serials: names,
  /** Box of a logger the register does not place, by serial. */
  boxes: names,
})

export type LogSaid = z.infer<typeof said>

export type ReceivedLog =
  | { readonly ok: true; readonly log: LogToKeep; readonly by: Person }
  | { readonly ok: false; readonly says: string }

const largestBytes = 200 * 1024 * 1024

const refuse = (says: string) => ({ ok: false, says }) as const

/** A logger's file with what was answered about it so far; nothing of it is kept yet. */
export async function receivedLog(request: Request): Promise<ReceivedLog> {
  if (request.headers.get('sec-fetch-site') === 'cross-site')
    return refuse('Files are taken from this tool’s own pages only.')
  const by = await personHere()
  if (by === null) return refuse('Say who you are first: every file carries who brought it.')
  const form = await request.formData()
  const file = form.get('file')
  if (!(file instanceof File)) return refuse('Choose a file first.')
  if (file.size > largestBytes)
    return refuse('The file is larger than 200 MB. Bring it in by the command line.')
  const read = said.safeParse(JSON.parse(String(form.get('said') ?? 'null')))
  if (!read.success)
    return refuse('The answers could not be taken over. Reload the page and choose the file again.')
  const { answers: given, serials, boxes } = read.data
  const stood = Object.fromEntries(Object.entries(boxes).map(([serial, box]) => [serial, { box }]))
  const log = {
    projectId: String(form.get('project') ?? ''),
    name: file.name.slice(0, 200),
    bytes: new Uint8Array(await file.arrayBuffer()),
    serials,
    stood,
    ...(given === null ? {} : { answers: { ...given, receivedAtMs: Date.now() } as LogAnswers }),
  }
  return { ok: true, log, by }
}
