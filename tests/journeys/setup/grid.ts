import type { Locator, Page } from 'playwright-core'

/** Rows of the Intake grid that are drawn, without the headings. */
export const gridRows = (page: Page): Locator => page.locator('[role=grid] [role=rowgroup] [role=row]')

export const cellAt = (page: Page, row: number, column: number): Locator =>
  page.locator(`[role=gridcell][data-row="${row}"][data-column="${column}"]`)

/** The plan beside a row, as it is read. */
export const planBeside = (page: Page, row: number): Locator => gridRows(page).nth(row).locator('> *').last()

/** Intake, ready to type in. */
export async function openIntake(page: Page): Promise<void> {
  await page.goto('/intake')
  await page.locator('[role=grid]').waitFor()
  await page.getByText('Kept on this device').waitFor()
}

/** A block of cells from a spreadsheet, put on the clipboard and pasted where focus stands. */
export async function pasteCells(page: Page, rows: readonly (readonly string[])[]): Promise<void> {
  const text = rows.map((cells) => cells.map(quoted).join('\t')).join('\n')
  await page.evaluate((block) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', block)
    const paste = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true })
    document.activeElement?.dispatchEvent(paste)
  }, text)
}

const quoted = (cell: string) => (/["\t\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)
