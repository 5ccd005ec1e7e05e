import { describe, expect, test } from 'vitest'
import { findsOf, openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { stage } from './setup/stage.ts'

describe.skipIf(noBrowser)('a reason', () => {
  const { visit } = stage('demo')

  test('is opened down to its rule, its figure and the page of its work', async () => {
    const page = await visit()
    const [find] = await findsOf(page, 'q=nail&urgency=weeks')
    await openPage(page, find!)

    const keeping = page.locator('section[aria-labelledby="keeping"]')
    await keeping.getByText('Why so').click()
    // How dry it is kept rests on a published figure: one tap shows which.
    const leadsTo = (place: string) => `:has(> div > dl a[href^="/sources/${place}"])`
    const why = keeping
      .locator(`details${leadsTo('decisions/storage-humidity#')}${leadsTo('figures/')}`)
      .filter({ visible: true })
      .first()
    const reasons = why.locator('dl').first()
    expect(await reasons.isVisible()).toBe(false)
    await why.locator('summary').first().click()
    expect(await reasons.innerText()).toMatch(/Figures[^]*Sources[^]*Rule/)
    const figure = reasons.locator('a[href^="/sources/figures/"]').first()
    const figureWords = await figure.innerText()
    const rule = reasons.locator('a[href^="/sources/decisions/"]').first()
    const ruleTitle = await rule.innerText()

    // The rule, on its review sheet, in view.
    await rule.click()
    await page.waitForURL(/\/sources\/decisions\/[\w-]+#[\w-]+$/)
    const anchor = new URL(page.url()).hash.slice(1)
    const row = page.locator(`[id="${anchor}"]`)
    await row.waitFor()
    expect(await row.innerText()).toContain(ruleTitle)
    await expect
      .poll(() =>
        row.evaluate((one) => {
          const { top, bottom } = one.getBoundingClientRect()
          return bottom > 0 && top < innerHeight
        }),
      )
      .toBe(true)

    // The figure, with the place it stands in and what it is used by.
    await openPage(page, find!)
    await keeping.getByText('Why so').click()
    await why.locator('summary').first().click()
    await figure.click()
    await page.waitForURL(/\/sources\/figures\/[\w-]+$/)
    const figurePage = page.locator('main')
    await figurePage.locator('h1').waitFor()
    expect(await figurePage.innerText()).toContain(figureWords)
    expect(await figurePage.innerText()).toContain(ruleTitle)

    // The work, with how it is known and what of it was seen.
    const work = figurePage.locator('a[href^="/sources/works/"]').first()
    const cited = await work.innerText()
    expect(await figurePage.locator('dd:has(a[href^="/sources/works/"])').innerText()).toMatch(
      /\d{4}, .*(p\.|pp\.|table|section|abstract|§)/i,
    )
    await work.click()
    await page.waitForURL(/\/sources\/works\/[\w-]+$/)
    await page.locator('main h1').waitFor()
    const workPage = await page.locator('main').innerText()
    expect(workPage).toContain(figureWords)
    expect(workPage).toMatch(/\b(read|second-hand|common practice|from memory)\b/i)
    expect(workPage).toContain(/\d{4}/.exec(cited)?.[0] ?? cited)
  })

  test('stands behind every line of a plan', async () => {
    const page = await visit()
    for (const find of (await findsOf(page, 'q=iron')).slice(0, 5)) {
      await openPage(page, find)
      const lines = page.locator('main [data-strength]')
      expect(await lines.count()).toBeGreaterThan(3)
      const unfounded = await lines.evaluateAll((all) =>
        all
          .filter((line) => line.querySelector('details a[href^="/sources/works/"]') === null)
          .map((line) => line.textContent),
      )
      expect(unfounded).toEqual([])
    }
  })
})
