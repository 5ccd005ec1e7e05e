import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { findsOf, openPage } from './setup/pages.ts'
import { stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const conservator = { name: 'Bo Lathe', role: 'conservator' } as const

/** A fitting with a white skin, of which it is known what it is. */
const fitting = async (page: Page) => (await findsOf(page, 'order=number&q=TW-0302'))[0]!
const resultOf = (asked: string) => async (page: Page) => `${await fitting(page)}/identify${asked}`
const skin = '?component=body&matter=white-skin'

const states: readonly (readonly [string, (page: Page) => Promise<string>])[] = [
  ['how good the guesses were', () => Promise.resolve('/sources/score')],
  ['a result, before it is said of what', resultOf('')],
  ['a result of diffraction', resultOf(`${skin}&method=xrd`)],
  ['a result of fluorescence', resultOf(`${skin}&method=xrf`)],
  ['a section under the microscope', resultOf(`${skin}&method=sem-eds`)],
  ['what was judged without a method', resultOf(`${skin}&method=judged`)],
  ['a result that answers nothing that was asked', resultOf('?component=body&method=x-radiography')],
  ['a result that was kept', resultOf(`${skin}&method=xrf&kept=before`)],
]

describe.skipIf(noBrowser)('keeping score, with the demo in it', () => {
  const { visit } = stage('demo')

  test.each(states)('%s can be seen and used by everybody', async (_, place) => {
    const page = await visit({ person: conservator })
    await openPage(page, await place(page))
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('a result is entered without scripts; what was given stays until it is kept', async () => {
    const path = await fitting(await visit())
    const page = await visit({ person: conservator, options: { javaScriptEnabled: false } })
    await page.goto(`${path}/identify`)
    await page.getByRole('link', { name: 'X-ray diffraction' }).last().click()
    await page.getByLabel('Cassiterite').check()
    await page.getByRole('button', { name: 'Keep this result' }).click()
    await page.getByText('One answer needs another look.').waitFor()
    expect(await page.getByLabel('Cassiterite').isChecked()).toBe(true)
    await page.getByLabel('Whose result is it?').fill('The laboratory')
    await page.getByLabel('What is the white metal skin, then?').selectOption('tinning')
    await page.getByRole('button', { name: 'Keep this result' }).click()
    await page.getByText('It was found to be tinning.').waitFor()
    await page.getByRole('link', { name: 'Back to the find and its plan' }).click()
    await page
      .getByText(/xrd:cassiterite/i)
      .first()
      .waitFor()
  })

  test('the drawing does not run over the edge of a telephone, nor of paper', async () => {
    const page = await visit({ options: { viewport: { width: 360, height: 780 }, colorScheme: 'dark' } })
    await openPage(page, '/sources/score')
    const over = () =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(await over()).toBe(0)
    await page.emulateMedia({ media: 'print' })
    expect(await over()).toBe(0)
    expect(await page.locator('main figure svg').first().isVisible()).toBe(true)
  })

  test('what was found out leaves as a table that says it is invented', async () => {
    const page = await visit()
    await openPage(page, '/sources/score')
    const begun = page.waitForEvent('download')
    await page.getByRole('link', { name: /as a table/ }).click()
    expect((await begun).suggestedFilename()).toBe('Tollgate Wharf (invented) - identifications.csv')
  })
})

describe.skipIf(noBrowser)('keeping score, with nothing in it', () => {
  const { visit } = stage('empty')

  test('says what will stand there', async () => {
    const page = await visit()
    await openPage(page, '/sources/score')
    await page.getByText(/how good the guesses were/).waitFor()
    expect(await flawsOfLook(page)).toEqual([])
  })
})
