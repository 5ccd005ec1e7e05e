'use client'

import { useCallback, useMemo, useReducer, useRef, useState } from 'react'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { doNow } from '../../lib/field/do-now.ts'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import { act } from './_sheet/act.ts'
import { readBlock } from './_sheet/paste.ts'
import { step } from './_sheet/sheet.ts'
import { fieldAt, gridState, liveRows } from './_sheet/state.ts'
import { takesSeveral, wordsOf } from './_grid/options.ts'
import { CellEditor } from './_grid/cell-editor.tsx'
import { CellHelp } from './_grid/cell-help.tsx'
import { basics } from './_grid/columns.ts'
import { Grid } from './_grid/grid.tsx'
import { PastePreview } from './_grid/paste-preview.tsx'
import { Toolbar } from './_grid/toolbar.tsx'
import { newId } from './_grid/use-grid-events.ts'
import { useWords } from './_grid/use-words.ts'
import { DoNowStrip } from './_plan/do-now-strip.tsx'
import { LoudHazards } from './_plan/loud-hazards.tsx'
import { PlanPanel } from './_plan/plan-panel.tsx'
import { PlanSaid } from './_plan/plan-said.tsx'
import type { IntakeProps } from './intake.tsx'
import { KeepBag } from './keep-bag-form.tsx'
import { cellAfter, rowToAnswer } from './answer-row.ts'
import { useDraft } from './use-draft.ts'
import { useSettled } from './use-settled.ts'
import { useSteadyPlace } from './use-steady-place.ts'
import { usePlanning } from './use-planning.ts'

export function Bag(props: IntakeProps & { readonly knowledge: Knowledge }) {
  const { knowledge } = props
  const [state, dispatch] = useReducer(act, null, () => gridState([{ id: newId(), cells: {} }], basics))
  const [pasted, setPasted] = useState<readonly (readonly string[])[] | null>(null)
  const wantsFocus = useRef(false)
  const rows = useMemo(() => liveRows(state), [state])
  // What is being typed is kept too: a long note may be typed without ever leaving its cell.
  const sheet = useMemo(() => step(state.sheet, rows), [state.sheet, rows])
  const draft = useDraft(props.project ?? 'new', sheet, dispatch)
  const planning = usePlanning(rows, knowledge, props.asOf, props.contacts)
  const table = useRef<HTMLDivElement>(null)
  const { labelOf, show, flawsOf } = useWords(knowledge, planning.read)

  const field = fieldAt(state)
  const here = rows[state.spot.row]
  const planned = here === undefined ? null : planning.planned(here.id)
  const planOf = useCallback(
    (row: { readonly id: string }) => ({
      planned: planning.planned(row.id),
      withAbove: planning.read.get(row.id)?.leads === false && planning.read.get(row.id)?.record !== null,
    }),
    [planning],
  )
  const onBlock = (text: string) => {
    const cells = readBlock(text)
    if (cells.length === 1 && cells[0]?.length === 1) {
      dispatch({ do: 'paste', block: { fields: [field], headed: false, rows: cells }, newIds: [] })
    } else if (cells.length > 0) setPasted(cells)
  }
  const leavePreview = () => {
    wantsFocus.current = true
    setPasted(null)
  }
  const view = useMemo(() => ({ rows, planning, planned }), [rows, planning, planned])
  const settled = useSettled(view)
  const now = useMemo(() => doNow(settled.planning.bag), [settled])
  useSteadyPlace(table, now, now.stops.length)
  const onAnswer = useCallback(
    (part: string | null, asked: FieldName, text: string) => {
      const { planned: answered, planning: then } = settled
      const whose = fields[asked].level === 'find' ? null : part
      const rowId = answered === null ? null : rowToAnswer(settled.rows, then.read, answered, whose)
      if (rowId === null) return
      dispatch({ do: 'answer', rowId, field: asked, text: cellAfter(settled.rows, rowId, asked, text) })
    },
    [settled],
  )

  return (
    <div className="stack wide">
      <DoNowStrip now={now} knowledge={knowledge} />
      <LoudHazards rows={rows} read={planning.read} knowledge={knowledge} />
      <div ref={table} className="stack">
        <Toolbar state={state} dispatch={dispatch} draft={draft} wantsFocus={wantsFocus} />
        <Grid
          state={state}
          rows={rows}
          dispatch={dispatch}
          labelOf={labelOf}
          show={show}
          flawsOf={flawsOf}
          planOf={planOf}
          onBlock={onBlock}
          wantsFocus={wantsFocus}
          editor={
            state.editing === null ? null : (
              <CellEditor
                key={`${here?.id} ${field}`}
                label={labelOf(field)}
                text={state.editing.text}
                words={wordsOf(field, knowledge)}
                several={takesSeveral(field)}
                onType={(text) => dispatch({ do: 'type', text })}
                onLeave={() => dispatch({ do: 'commit' })}
              />
            )
          }
        />
      </div>
      <CellHelp
        field={field}
        flaw={here === undefined ? null : (flawsOf(here)?.get(field) ?? null)}
        knowledge={knowledge}
      />
      <KeepBag rows={state.sheet.rows} bag={planning.bag} known={props.known} dispatch={dispatch} />
      {settled.planned !== null && (
        <PlanPanel
          planned={settled.planned}
          planner={planning.planner}
          knowledge={knowledge}
          onAnswer={onAnswer}
        />
      )}
      <PlanSaid planned={planned} />
      {pasted !== null && (
        <PastePreview
          cells={pasted}
          state={state}
          knowledge={knowledge}
          onPaste={(block) => {
            dispatch({ do: 'paste', block, newIds: block.rows.map(newId) })
            leavePreview()
          }}
          onLeave={leavePreview}
        />
      )}
    </div>
  )
}
