'use client'

import { useVirtualizer } from '@tanstack/react-virtual'
import {
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  type ReactNode,
  type RefObject,
} from 'react'
import type { Planned } from '../../../lib/field/bag.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import type { Act } from '../_sheet/act.ts'
import { selected, type GridState } from '../_sheet/state.ts'
import type { Rows, SheetRow } from '../_sheet/sheet.ts'
import { templateOf } from './columns.ts'
import { GridRow } from './grid-row.tsx'
import { useGridEvents } from './use-grid-events.ts'
import { rowsShown } from './rows-shown.ts'
import style from './grid.module.css'

interface Props {
  readonly state: GridState
  /** As they stand while one types. */
  readonly rows: Rows
  readonly dispatch: (action: Act) => void
  readonly labelOf: (field: FieldName) => string
  readonly show: (field: FieldName, text: string) => string
  readonly flawsOf: (row: SheetRow) => ReadonlyMap<FieldName, string> | null
  readonly planOf: (row: SheetRow) => { readonly planned: Planned | null; readonly withAbove: boolean }
  readonly editor: ReactNode
  readonly onBlock: (text: string) => void
  /** Set by whatever moves the active cell on purpose: the next drawing then takes focus to it. */
  readonly wantsFocus: RefObject<boolean>
}

const rowHeight = 56
const headHeight = 48

/** The bag as a grid: one cell in the tab order, rows drawn only where they are seen. */
export function Grid({
  state,
  rows,
  dispatch,
  labelOf,
  show,
  flawsOf,
  planOf,
  editor,
  onBlock,
  wantsFocus,
}: Props) {
  const scroller = useRef<HTMLDivElement>(null)
  const { columns, spot } = state
  const template = useMemo(() => templateOf(columns), [columns])
  const block = selected(state)

  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeight,
    overscan: 6,
    scrollMargin: headHeight,
    scrollPaddingStart: headHeight,
    rangeExtractor: useCallback(
      (range: Parameters<typeof rowsShown>[0]) => rowsShown(range, spot.row),
      [spot.row],
    ),
  })

  const page = () => Math.max(1, Math.floor((scroller.current?.clientHeight ?? rowHeight) / rowHeight) - 1)
  const events = useGridEvents(state, dispatch, onBlock, page, wantsFocus)

  useEffect(() => virtual.scrollToIndex(spot.row, { align: 'auto' }), [virtual, spot.row])
  useLayoutEffect(() => {
    if (!wantsFocus.current || state.editing !== null) return
    wantsFocus.current = false
    const cell = scroller.current?.querySelector<HTMLElement>('[data-active]')
    cell?.focus({ preventScroll: true })
    cell?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' })
  })

  return (
    <div
      ref={scroller}
      className={style.grid}
      role="grid"
      aria-label="The bag, a part a row"
      aria-describedby="grid-keys"
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length + 2}
      aria-multiselectable="true"
      {...events}
    >
      <div
        role="row"
        aria-rowindex={1}
        className={style.head}
        style={{ gridTemplateColumns: template, height: headHeight }}
      >
        <div role="columnheader" aria-colindex={1} className={style.count}>
          <span className="visually-hidden">Row</span>
        </div>
        {columns.map((field, column) => (
          <div
            key={field}
            role="columnheader"
            aria-colindex={column + 2}
            className={column === 0 ? `${style.name} ${style.first}` : style.name}
          >
            {labelOf(field)}
          </div>
        ))}
        <div role="columnheader" aria-colindex={columns.length + 2} className={`${style.name} ${style.plan}`}>
          Plan
        </div>
      </div>
      <div role="rowgroup" className={style.body} style={{ height: virtual.getTotalSize() }}>
        {virtual.getVirtualItems().map(({ index, start }) => {
          const row = rows[index]
          if (row === undefined) return null
          const inBlock = index >= block.top && index <= block.bottom
          return (
            <GridRow
              key={row.id}
              row={row}
              at={index}
              top={start - headHeight}
              columns={columns}
              template={template}
              active={index === spot.row ? spot.column : -1}
              selectedFrom={inBlock ? block.left : 0}
              selectedTo={inBlock ? block.right : -1}
              flaws={flawsOf(row)}
              show={show}
              editor={index === spot.row && state.editing !== null ? editor : null}
              {...planOf(row)}
            />
          )
        })}
      </div>
    </div>
  )
}
