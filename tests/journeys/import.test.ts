import { parse } from 'csv-parse/sync'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { csvText } from '../../lib/tables/csv-write.ts'
import { recordTable } from '../../lib/tables/write-file.ts'
import { writeWorkbook } from '../../lib/tables/xlsx-write.ts'
import { demoWorkbook, names, read, saved, workbook } from './setup/files.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'

const broken = { withoutNumber: 40, ofUnknownMaterial: 90, dangerous: 120 }

/** The demo's workbook with three rows broken; each of them was a find of its own in one row. */
async function brokenWorkbook() {
  const { records } = await read(demoWorkbook())
  const table = recordTable(records, names.fields).map((row) => [...row])
  const column = (heading: string) => table[0]!.indexOf(heading)
  const numbers = table.map((row) => row[column('find_number')])
  const alone = numbers.flatMap((number, at) =>
    at > 0 && numbers.indexOf(number) === at && numbers.lastIndexOf(number) === at ? [at] : [],
  )
  const [withoutNumber, ofUnknownMaterial, dangerous] = Object.values(broken).map((at) => alone[at]!)
  table[withoutNumber!]![column('find_number')] = ''
  table[ofUnknownMaterial!]![column('material')] = 'unobtainium'
  const danger = table[dangerous!]!
  danger.fill('')
  danger[column('notes')] = 'looks like a hand grenade, left in the trench'
  return {
    bytes: await writeWorkbook('finds', table),
    records: records.length,
    // Rows as a spreadsheet counts them: the headings are row 1.
    rows: {
      withoutNumber: withoutNumber! + 1,
      ofUnknownMaterial: ofUnknownMaterial! + 1,
      dangerous: dangerous! + 1,
    },
  }
}

/** Top edge of what is said, so that what must come first can be shown to. */
const top = async (page: Page, text: RegExp) => (await page.getByText(text).first().boundingBox())!.y

describe.skipIf(noBrowser)('a workbook with three broken rows', () => {
  const { visit } = stage('empty')

  test('is shown before it is kept, kept whole, and its broken rows come back as a file to mend', async () => {
    const file = await brokenWorkbook()
    const page = await visit({ person: assistant })
    await page.goto('/import')
    await page.getByLabel('Name of the new project').fill('Quay, sheets of the summer')
    await page.getByLabel(/Choose a file/).setInputFiles(workbook('quay.xlsx', file.bytes))

    // The dry run.
    await page.getByRole('heading', { name: 'What quay.xlsx would bring' }).waitFor({ timeout: 60_000 })
    const wouldBe = await page.locator('main').innerText()
    expect(wouldBe).toContain(`${file.records - 2} records could be read`)
    expect(wouldBe).toContain(`${file.records - 2} records would be added`)
    expect(wouldBe).toContain('2 rows could not be read.')
    const whereOf = (severity: string) =>
      page.locator('main tbody tr').filter({ hasText: severity }).locator('th').allInnerTexts()
    const unreadable = (await whereOf('Not read')).join('\n')
    expect(unreadable).toMatch(new RegExp(`\\b${file.rows.withoutNumber}\\b`))
    expect(unreadable).toMatch(new RegExp(`\\b${file.rows.dangerous}\\b`))
    const unknown = page.locator('main tbody tr').filter({ hasText: 'unobtainium' })
    expect(await unknown.locator('th').innerText()).toMatch(
      new RegExp(`row ${file.rows.ofUnknownMaterial}\\b.*material`, 'i'),
    )
    // The danger in a row that cannot be read is told before everything else.
    const danger = page
      .locator('main')
      .getByText(new RegExp(`row ${file.rows.dangerous}\\b`))
      .first()
    expect(await danger.innerText()).toMatch(/Call /)
    expect(await top(page, /^Stop\./)).toBeLessThan(await top(page, /records could be read/))
    expect(await page.getByRole('button', { name: /^Keep \d/ }).count()).toBe(1)

    // Nothing is kept until somebody says so.
    const other = await page.context().newPage()
    await openPage(other, '/finds')
    expect(await other.locator('main').innerText()).not.toMatch(/\d finds?\b/)
    await other.close()

    // The import and its result.
    await page.getByRole('button', { name: `Keep ${file.records - 2} records` }).click()
    await page.getByRole('heading', { name: 'quay.xlsx is in' }).waitFor({ timeout: 80_000 })
    expect(await page.locator('main').innerText()).toContain(`${file.records - 2} records were added`)

    // The rows to mend, saved, read again, mended and read once more.
    const download = page.waitForEvent('download')
    await page.getByRole('link', { name: 'Save 2 rows to mend' }).click()
    const { name, bytes } = await saved(await download)
    expect(name).toMatch(/quay.*\.csv$/)
    const again = await read(bytes)
    expect(again.unreadableRows).toHaveLength(2)
    expect(again.loudHazards.map(({ hazard }) => hazard)).toContain('ammunition-like')
    const mended = await read(mend(bytes))
    expect(mended.unreadableRows).toEqual([])
    expect(mended.records.map(({ find_number }) => find_number)).toEqual(['TW-9901', 'TW-9902'])

    await page.getByRole('button', { name: 'Import another file' }).click()
    await page.getByLabel(/Choose a file/).setInputFiles({ name, mimeType: 'text/csv', buffer: mend(bytes) })
    await page.getByRole('button', { name: 'Keep 2 records' }).click()
    await page.getByRole('heading', { name: `${name} is in` }).waitFor()
    await openPage(page, '/finds?q=TW-9902')
    const found = await page.locator('main').innerText()
    expect(found).toContain('1 find')
    expect(found).toMatch(/Stop\. /)
  })
})

/** What somebody does who opens the saved rows: gives each its number and material. */
function mend(bytes: Buffer): Buffer {
  const [headings, ...rows] = parse(bytes, { bom: true, relax_column_count: true }) as string[][]
  const number = headings!.indexOf('find_number')
  const material = headings!.indexOf('material')
  const mended = rows.map((cells, turn) =>
    cells.with(number, `TW-990${turn + 1}`).with(material, cells[material] || 'iron'),
  )
  return Buffer.from(csvText([headings!, ...mended]))
}
