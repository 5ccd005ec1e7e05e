import { createHash } from 'node:crypto'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { LogFile } from './loggers.ts'
import { unpackOriginal } from './pack-original.ts'
import type { World } from './ports.ts'

export interface LogOriginal {
  readonly file: LogFile
  readonly bytes: Uint8Array
  /** The bytes still have the hash under which they were kept. */
  readonly sound: boolean
}

/** A logger's file as it was handed in, to the last bit. */
export function logOriginal({ store }: World, { fileId }: { readonly fileId: string }): Answer<LogOriginal> {
  return store.read(async (reads) => {
    const file = await reads.logFiles.byId(fileId)
    if (!file) return refused(missing('log file', fileId))
    const bytes = await unpackOriginal(await reads.logFiles.packed(fileId))
    const sound = createHash('sha256').update(bytes).digest('hex') === file.sha256
    return given({ file, bytes, sound })
  })
}
