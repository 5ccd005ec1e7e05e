import { z } from 'zod'
import type { WalkEntry } from '../../../lib/papers/walk-list.ts'

const entry = z.object({
  id: z.string().max(80),
  project: z.string().max(80),
  box: z.string().max(200),
  on: z.string().max(10),
  atMs: z.number(),
  seen: z.object({
    strip: z.tuple([z.number(), z.number()]).nullable(),
    gelColour: z.string().max(80).nullable(),
    lid: z.enum(['seated', 'not-seated']).nullable(),
    waterChanged: z.boolean(),
  }),
  sentMs: z.number().nullable(),
})
const sent = z.object({ project: z.string().max(80), entries: z.array(entry).max(2000) })

/** What a phone sends, held to its form; null where it is something else. */
export function readSent(
  body: unknown,
): { readonly project: string; readonly entries: readonly WalkEntry[] } | null {
  const read = sent.safeParse(body)
  return read.success ? read.data : null
}
