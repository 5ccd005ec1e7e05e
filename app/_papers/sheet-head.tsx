import type { IsoDate } from '../../lib/base/calendar.ts'
import type { Project } from '../../lib/services/kept.ts'
import { dayWords } from '../../lib/wording/day.ts'
import { countWords } from '../../lib/wording/list.ts'
import { Invented } from '../_marks/invented.tsx'
import { PrintButton } from './print-button.tsx'

interface Props {
  readonly name: string
  readonly project: Project | null
  readonly today: IsoDate
  readonly finds: number
  readonly total: number
}

export function SheetHead({ name, project, today, finds, total }: Props) {
  return (
    <header className="head">
      <h1>{name}</h1>
      {finds > 0 && (
        <p>
          {`${project?.name ?? ''}, ${dayWords(today)}, ${countWords(finds, 'find')}`}{' '}
          {project?.invented === true && <Invented />}
        </p>
      )}
      {total > finds && (
        <p className="wrong">{`${countWords(total - finds, 'more find')} would not fit on one sheet. Narrow the search.`}</p>
      )}
      {finds > 0 && (
        <div className="no-print">
          <PrintButton says="Print" />
        </div>
      )}
    </header>
  )
}
