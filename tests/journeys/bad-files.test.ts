import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { zip } from '../tables/zip.ts'
import { workbook, type ChosenFile } from './setup/files.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'

const text = (name: string, content: string): ChosenFile => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(content),
})
const bomb = () => zip([{ name: 'xl/workbook.xml', content: Buffer.alloc(60_000_000) }])
const bytes = Buffer.from(Uint8Array.from({ length: 8192 }, (_, at) => (at * 31) % 256))

const bad: readonly (readonly [string, () => ChosenFile, RegExp])[] = [
  ['an empty file', () => text('empty.csv', ''), /There is nothing in this file\./],
  ['headings only', () => text('headings.csv', 'find_number,material\n'), /headings but no rows/],
  [
    'a web page',
    () => text('page.csv', '<!DOCTYPE html><html><body>TW-1</body></html>'),
    /This is a web page\./,
  ],
  ['a binary', () => ({ name: 'x.xlsx', mimeType: '', buffer: bytes }), /This is no text and no workbook\./],
  ['a zip bomb', () => workbook('bomb.xlsx', bomb()), /unpack to far more than its size/],
  ['a torn workbook', () => workbook('torn.xlsx', bomb().subarray(0, 500)), /damaged or cut short/],
]

async function choose(page: Page, file: ChosenFile): Promise<string> {
  await page.getByLabel(/Choose a file/).setInputFiles(file)
  await page.getByRole('heading', { name: `What ${file.name} would bring` }).waitFor({ timeout: 30_000 })
  return page.locator('main').innerText()
}

describe.skipIf(noBrowser)('a file that holds no records', () => {
  const { visit, server } = stage('empty')

  test.each(bad)('%s is answered in clear words, and nothing of it is kept', async (_, file, words) => {
    const page = await visit({ person: assistant })
    await openPage(page, '/import')
    const name = page.getByLabel('Name of the new project')
    if (await name.isVisible()) await name.fill('Trial')
    const answer = await choose(page, file())
    expect(answer).toMatch(words)
    expect(answer).not.toMatch(/undefined|null|NaN|\[object/)
    expect(await page.getByRole('button', { name: /^Keep 0 / }).isDisabled()).toBe(true)
    // The way back is open, and a good file goes through.
    await page.getByRole('button', { name: 'Choose another file' }).click()
    const good = await choose(page, text('good.csv', 'find_number,material\nTW-1,iron\n'))
    expect(good).toContain('1 record could be read')
    await openPage(page, '/finds')
    expect(await page.locator('main').innerText()).not.toMatch(/\b[1-9]\d* finds?\b/)
    expect(server().isRunning()).toBe(true)
  })

  test('rows with trouble in them are kept all the same, each trouble with its place', async () => {
    const page = await visit({ person: assistant })
    await openPage(page, '/import')
    const name = page.getByLabel('Name of the new project')
    if (await name.isVisible()) await name.fill('Trial')
    const rows = [
      'find_number;material;mass_g;recorded_on;stored_rh_percent;notes',
      'TW-1;iron;12,5 g;31.12.2025;55 %;"unbalanced',
      'TW-2;irn;=1+1;2025-13-40;unknown;unknown',
      'TW-2;iron;;;;again',
      'TW-3;unknown;unknown;unknown;;',
    ]
    const answer = await choose(page, text('trouble.csv', rows.join('\n')))
    expect(answer).toMatch(/[1-4] records could be read/)
    for (const found of ['irn', '2025-13-40']) {
      const row = page.locator('main tbody tr').filter({ hasText: found }).first()
      expect(await row.locator('th').innerText()).toMatch(/^Row 3,/)
    }
    await page.getByRole('button', { name: /^Keep [1-9]/ }).click()
    await page.getByRole('heading', { name: 'trouble.csv is in' }).waitFor()
    await openPage(page, '/finds?order=number')
    expect(await page.locator('main').innerText()).toContain('TW-2')
    expect((await fetch(server().address)).status).toBe(200)
  })

  test('a file that is refused before it is read says so and loses nothing', async () => {
    const page = await visit({ person: assistant })
    await openPage(page, '/import')
    const name = page.getByLabel('Name of the new project')
    if (await name.isVisible()) await name.fill('Trial')
    // Whoever sits there is forgotten meanwhile, as when cookies are cleared.
    await page.context().clearCookies({ name: 'quietmetal-person' })
    await page
      .getByLabel(/Choose a file/)
      .setInputFiles(text('good.csv', 'find_number,material\nTW-1,iron\n'))
    const alert = page.locator('main').getByRole('alert')
    await alert.waitFor()
    expect(await alert.innerText()).toContain('Say who you are first')
    expect(await page.getByLabel(/Choose a file/).isEnabled()).toBe(true)
  })
})
