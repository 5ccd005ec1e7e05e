import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { findsOf, openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { stage } from './setup/stage.ts'

/** Width of the printed area at 96 pixels an inch, margins of 14 mm taken off. */
const papers = { A4: { mm: [210, 297] }, Letter: { mm: [215.9, 279.4] } } as const
const pixels = (mm: number) => Math.floor(((mm - 28) / 25.4) * 96)

/** What sticks out of the paper to the right or is cut off by its own box. */
function cutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const shown = [...document.querySelectorAll('main *')].filter(
      (one) => one instanceof HTMLElement && one.checkVisibility(),
    )
    const edge = document.documentElement.clientWidth + 1
    return shown
      .filter((one) => {
        const hides = getComputedStyle(one).overflowX !== 'visible'
        return one.getBoundingClientRect().right > edge || (hides && one.scrollWidth > one.clientWidth + 1)
      })
      .map((one) => `${one.tagName} ${one.textContent.slice(0, 60)}`)
  })
}

const sheets = ['/sheets/bag', '/sheets/supplies', '/sheets/hand-over']

describe.skipIf(noBrowser)('what goes on paper', () => {
  const { visit } = stage('demo')

  test('the bag sheet holds every find of the box, whole, with a label each', async () => {
    const page = await visit()
    await openPage(page, '/sheets/bag?box=TW-B08')
    const finds = await page.locator('main tbody th').allInnerTexts()
    expect(finds.length).toBeGreaterThan(3)
    await page.emulateMedia({ media: 'print' })
    const labels = page.locator('section[aria-labelledby="labels"] li')
    expect(await labels.count()).toBe(finds.length)
    for (const [at, find] of finds.entries()) {
      const number = /TW-\d+/.exec(find)![0]
      expect(await labels.nth(at).innerText()).toContain(number)
      expect(
        await labels
          .nth(at)
          .getByRole('img', { name: `Code of ${number}` })
          .count(),
      ).toBe(1)
    }
    // No chrome on paper.
    expect(await page.locator('nav, form, button, footer').filter({ visible: true }).count()).toBe(0)
    const told = await page.locator('main').innerText()
    expect(told).toContain('Do, in order')
  })

  test.each(Object.entries(papers))(
    'nothing of any sheet is cut off on %s, from a dark screen too',
    async (format, { mm }) => {
      const page = await visit({ options: { colorScheme: 'dark' } })
      await page.setViewportSize({ width: pixels(mm[0]), height: pixels(mm[1]) })
      const find = (await findsOf(page, 'order=urgency'))[0]!
      for (const path of [...sheets.map((sheet) => `${sheet}?box=TW-B08`), find]) {
        await openPage(page, path)
        await page.emulateMedia({ media: 'print' })
        expect(await cutOff(page), path).toEqual([])
        const ink = await page.evaluate(() => getComputedStyle(document.querySelector('main h1')!).color)
        expect(ink, path).toBe('rgb(0, 0, 0)')
        const file = await page.pdf({ format })
        expect(file.subarray(0, 5).toString('latin1')).toBe('%PDF-')
        await page.emulateMedia({ media: 'screen' })
      }
    },
  )

  test('a stop is printed first and whole, with its sources', async () => {
    const page = await visit()
    const [dangerous] = await findsOf(page, 'stops=1')
    await openPage(page, dangerous!)
    await page.emulateMedia({ media: 'print' })
    const stop = page.getByRole('region', { name: /^Stop/ }).first()
    expect(await stop.innerText()).toMatch(/Call /)
    const above = await page.evaluate(() => {
      const stop = document.querySelector('section[aria-label^="Stop"]')!
      return stop.compareDocumentPosition(document.querySelector('h1')!) & Node.DOCUMENT_POSITION_FOLLOWING
    })
    expect(above).toBeGreaterThan(0)
    expect(await stop.locator('.print-only').first().isVisible()).toBe(true)
  })
})
