import { describe, expect, test } from 'vitest'
import { cellAt, gridRows, openIntake, pasteCells, planBeside } from './setup/grid.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'

const materials = ['iron', 'lead', 'copper-alloy', 'silver']
const headings = ['Find number', 'Context', 'Object', 'Material', 'Drawer']
const twenty = Array.from({ length: 20 }, (_, at) => [
  `TW-7${String(at).padStart(3, '0')}`,
  '3100',
  at === 4 ? 'strap end,\n"with" rivets' : 'fitting',
  materials[at % materials.length]!,
  `D${at}`,
])

describe.skipIf(noBrowser)('twenty rows from a spreadsheet', () => {
  const { visit } = stage('empty')
  const rowCount = 'aria-rowcount'

  test('are shown before they land, land whole, and are undone and done again in one step', async () => {
    const page = await visit({ person: assistant })
    await openIntake(page)
    const grid = page.locator('[role=grid]')
    await cellAt(page, 0, 0).click()
    await page.keyboard.type('TW-6999')
    await page.keyboard.press('Tab')

    await pasteCells(page, [headings, ...twenty])
    const preview = page.getByRole('dialog', { name: 'Paste 20 rows' })
    await preview.waitFor()
    const told = await preview.innerText()
    expect(told).toContain('Its first line names the columns.')
    expect(told).toContain('Drawer (not taken)')
    expect(told).toContain('1 column without a place here will not be taken over')
    expect(told).toContain('It goes over 1 row that already hold something')
    expect(await preview.locator('tbody tr').first().innerText()).toContain('TW-7000')

    // Leaving it changes nothing.
    await preview.getByRole('button', { name: 'Leave it' }).click()
    await preview.waitFor({ state: 'detached' })
    expect(await grid.getAttribute(rowCount)).toBe('2')
    expect(await cellAt(page, 0, 0).innerText()).toBe('TW-6999')

    await cellAt(page, 0, 0).click()
    await pasteCells(page, [headings, ...twenty])
    await preview.getByRole('button', { name: 'Paste', exact: true }).click()
    await expect.poll(() => grid.getAttribute(rowCount)).toBe('21')
    expect(await cellAt(page, 0, 0).innerText()).toBe('TW-7000')
    expect(await cellAt(page, 4, 2).innerText()).toMatch(/strap end,\s+"with" rivets/)
    for (const [at, row] of (await gridRows(page).all()).entries()) {
      expect(await row.innerText()).toContain(twenty[at]![0])
      expect(await planBeside(page, at).innerText()).toMatch(/%/)
    }
    await page.getByRole('button', { name: 'Keep 20 finds in the project' }).waitFor()

    // Focus is back in the grid, so the keys answer at once.
    await page.keyboard.press('Control+z')
    await expect.poll(() => grid.getAttribute(rowCount)).toBe('2')
    expect(await cellAt(page, 0, 0).innerText()).toBe('TW-6999')
    await page.keyboard.press('Control+y')
    await expect.poll(() => grid.getAttribute(rowCount)).toBe('21')
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: 'Redo' }).click()
    expect(await grid.getAttribute(rowCount)).toBe('21')

    await page.getByRole('button', { name: 'Keep 20 finds in the project' }).click()
    await page.getByText(/20 records kept/).waitFor()
    await openPage(page, '/finds?order=number')
    expect(await page.locator('main').innerText()).toContain('20 finds')
  })

  test('without headings are taken as they stand from the active cell on', async () => {
    const page = await visit({ person: assistant })
    await openIntake(page)
    await cellAt(page, 0, 1).click()
    await pasteCells(page, [
      ['3200', 'hook', 'iron'],
      ['3200', 'buckle', 'tin'],
    ])
    const preview = page.getByRole('dialog', { name: 'Paste 2 rows' })
    expect(await preview.innerText()).toContain(
      'Its columns are taken as they stand from the active cell on.',
    )
    await page.keyboard.press('Tab')
    await preview.getByRole('button', { name: 'Paste', exact: true }).press('Enter')
    await expect.poll(() => page.locator('[role=grid]').getAttribute(rowCount)).toBe('3')
    expect(await cellAt(page, 1, 2).innerText()).toBe('buckle')
    expect(await cellAt(page, 1, 3).innerText()).toMatch(/tin/i)
    expect(await planBeside(page, 1).innerText()).toBe('Number and material first')
  })
})
