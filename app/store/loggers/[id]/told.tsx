import type { LogTold } from '../../../../lib/services/tell-log.ts'
import { logLines } from '../../../../lib/wording/logger-text.ts'

/** What all readings of one sensor say, in facts. */
export function Told({ told, zone }: { readonly told: LogTold; readonly zone: string }) {
  return (
    <ul className="measure">
      {logLines(told, zone).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
