import type { Page } from 'playwright-core'

/** Goes there and waits until the page itself stands, not the word that it is being read. */
export async function openPage(page: Page, path: string): Promise<void> {
  await page.goto(path)
  await page.locator('main h1').first().waitFor()
}

/** Paths of the finds that a search or filter of the list shows, in its order. */
export async function findsOf(page: Page, asked: string): Promise<readonly string[]> {
  await openPage(page, `/finds?${asked}`)
  return page
    .locator('main ul a[href^="/finds/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''))
}
