/** Unfolds the table behind a chart and hands it the focus, or folds it again. */
export function openTable(table: HTMLDetailsElement | null): void {
  if (table === null) return
  table.open = !table.open
  if (table.open) table.querySelector('summary')?.focus()
}
