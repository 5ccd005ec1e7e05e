import { memo, type ReactNode } from 'react'
import type { Planned } from '../../../lib/field/bag.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import { RowPlan } from '../_plan/row-plan.tsx'
import type { SheetRow } from '../_sheet/sheet.ts'
import style from './grid.module.css'

export interface RowProps {
  readonly row: SheetRow
  readonly at: number
  readonly top: number
  readonly columns: readonly FieldName[]
  readonly template: string
  /** Column of the active cell, or -1 where it is in another row. */
  readonly active: number
  readonly selectedFrom: number
  readonly selectedTo: number
  /** Fields whose text was not understood or was read with a guess, each with its words. */
  readonly flaws: ReadonlyMap<FieldName, string> | null
  readonly show: (field: FieldName, text: string) => string
  readonly editor: ReactNode
  readonly planned: Planned | null
  readonly withAbove: boolean
}

/** One row: drawn again only when something of its own has changed. */
export const GridRow = memo(function GridRow(props: RowProps) {
  const { row, at, columns, active, editor } = props
  return (
    <div
      role="row"
      aria-rowindex={at + 2}
      className={style.row}
      style={{ top: props.top, gridTemplateColumns: props.template }}
      data-here={active >= 0 || undefined}
    >
      <div role="rowheader" aria-colindex={1} className={style.count}>
        {at + 1}
      </div>
      {columns.map((field, column) => {
        const text = row.cells[field] ?? ''
        const flaw = props.flaws?.get(field)
        const isActive = column === active
        return (
          <div
            key={field}
            role="gridcell"
            aria-colindex={column + 2}
            aria-selected={column >= props.selectedFrom && column <= props.selectedTo}
            aria-invalid={flaw === undefined ? undefined : true}
            aria-describedby={isActive ? 'cell-help' : undefined}
            tabIndex={isActive && editor === null ? 0 : -1}
            className={column === 0 ? `${style.cell} ${style.first}` : style.cell}
            data-row={at}
            data-column={column}
            data-active={isActive || undefined}
            title={flaw}
          >
            {isActive && editor !== null ? (
              editor
            ) : (
              <span className={style.text}>{props.show(field, text)}</span>
            )}
          </div>
        )
      })}
      <div role="gridcell" aria-colindex={columns.length + 2} className={style.plan}>
        <RowPlan planned={props.planned} withAbove={props.withAbove} />
      </div>
    </div>
  )
})
