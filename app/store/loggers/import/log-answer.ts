import type { LogKept } from '../../../../lib/services/keep-log.ts'
import type { LogFileRead } from '../../../../lib/services/read-log-file.ts'

/** What the server says of a file: what it would bring, what was kept of it, or why not. */
export type LogAnswer =
  | { readonly read: LogFileRead }
  | { readonly kept: LogKept }
  | { readonly says: string }
