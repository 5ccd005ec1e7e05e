import fs from 'node:fs'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const manager = { name: 'Cy Warden', role: 'store-manager' } as const

const states = [
  ['what if, for the store', '/store/what-if'],
  ['a drier room', '/store/what-if?room=Metal%20store&drier=10'],
  ['one box with more gel', '/store/what-if?box=TW-B10&gel=2'],
  ['a box that cannot be reckoned', '/store/what-if?box=TW-B03'],
  ['a number that is none, and a place that is not there', '/store/what-if?room=Attic&drier=much'],
  ['how much gel', '/store/what-if?keep=TW-B10&limit=12&months=6'],
  ['the year that runs', '/store/report'],
  ['a year that is over', '/store/report?year=2025'],
  ['a year that never was', '/store/report?year=next'],
] as const

describe.skipIf(noBrowser)('the what-if panel and the year, with the demo in it', () => {
  const { visit } = stage('demo')

  test.each(states)('%s can be seen and used by everybody', async (_, path) => {
    const page = await visit({ person: manager })
    await openPage(page, path)
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  const headline = (page: Page) => page.getByText(/renewals? a year (fewer|more)/).first()

  test('the answer follows a slider by keys, and the address keeps the question', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/what-if')
    await page.getByRole('slider', { name: /drier/ }).focus()
    for (let times = 0; times < 10; times += 1) await page.keyboard.press('ArrowRight')
    await headline(page).waitFor()
    const told = await headline(page).textContent()
    expect(new URL(page.url()).searchParams.get('drier')).toBe('10')
    await page.reload()
    await headline(page).waitFor()
    expect(await headline(page).textContent()).toBe(told)
    await page.getByRole('textbox', { name: /held more gel/ }).fill('2')
    await page.getByText(/more of dry gel goes into the boxes once/).waitFor()
  })

  test('it works without scripts, by the form alone', async () => {
    const page = await visit({ options: { javaScriptEnabled: false } })
    await page.goto('/store/what-if?room=Metal%20store')
    expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(true)
    await page.getByRole('textbox', { name: /room were drier/ }).fill('10')
    await page.getByRole('button', { name: 'Reckon' }).first().click()
    await headline(page).waitFor()
    const asked = new URL(page.url()).searchParams
    expect([asked.get('room'), asked.get('drier')]).toEqual(['Metal store', '10'])
  })

  test('how much gel a box needs is answered in place', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/what-if')
    await page.getByRole('combobox', { name: 'Box', exact: true }).fill('TW-B10')
    await page
      .getByText(/to hold in nine cases of ten/)
      .first()
      .waitFor()
    expect(await page.getByText(/mask of class/).count()).toBeGreaterThan(0)
  })

  test('the year leaves as CSV and as JSON', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/report')
    const take = async (link: string) => {
      const begun = page.waitForEvent('download')
      await page.getByRole('link', { name: link, exact: true }).click()
      const file = await begun
      return { name: file.suggestedFilename(), text: fs.readFileSync(await file.path(), 'utf8') }
    }
    const csv = await take('Boxes as CSV')
    expect(csv.name).toMatch(/^Tollgate Wharf store \d{4} boxes \(invented\)\.csv$/)
    expect(csv.text).toMatch(/^\ufeffbox,room,finds,limit_rh_percent,state,/)
    const json = await take('All as JSON')
    expect(JSON.parse(json.text)).toMatchObject({ project: 'Tollgate Wharf', invented: true })
  })

  test('on paper the year is black on white, without the frame, and nothing runs over the edge', async () => {
    const page = await visit({ options: { viewport: { width: 690, height: 980 }, colorScheme: 'dark' } })
    await openPage(page, '/store/report')
    await page.emulateMedia({ media: 'print' })
    const paper = await page.evaluate(() => {
      const seen = (one: Element) => one.getClientRects().length > 0
      return {
        ink: getComputedStyle(document.body).color,
        frame: [...document.querySelectorAll('header nav, form, button')].filter(seen).length,
        over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      }
    })
    expect(paper).toEqual({ ink: 'rgb(0, 0, 0)', frame: 0, over: 0 })
  })
})

describe.skipIf(noBrowser)('the what-if panel and the year, with nothing in it', () => {
  const { visit } = stage('empty')

  test.each(['/store/what-if', '/store/report'])('%s says what will stand there', async (path) => {
    const page = await visit()
    await openPage(page, path)
    expect(await flawsOfTabWalk(page)).toEqual([])
    expect(await flawsOfLook(page)).toEqual([])
  })
})
