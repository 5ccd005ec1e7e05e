import type { Locator, Page } from 'playwright-core'

/** Tabs on until focus stands on one of the wanted; a page may hold many stops, but none may be out of reach. */
export async function tabTo(page: Page, wanted: Locator, most = 120): Promise<void> {
  for (let stop = 0; stop < most; stop += 1) {
    await page.keyboard.press('Tab')
    const here = await wanted.evaluateAll((all) => all.some((one) => one === document.activeElement))
    if (here) return
  }
  throw new Error(`${most} tabs did not reach ${wanted}`)
}

/** Texts into neighbouring cells of a grid or form; an empty one goes by. */
export async function typeAlong(page: Page, texts: readonly string[]): Promise<void> {
  for (const [at, text] of texts.entries()) {
    if (at > 0) await page.keyboard.press('Tab')
    if (text !== '') await page.keyboard.type(text)
  }
}

const counter = 'pointer-events'

/** Counts what a mouse, pen or finger does on the pages of this tab from now on. */
export async function countPointers(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript((key) => {
    for (const name of ['pointerdown', 'mousedown', 'touchstart', 'wheel']) {
      addEventListener(
        name,
        () => sessionStorage.setItem(key, String(Number(sessionStorage.getItem(key)) + 1)),
        { capture: true, passive: true },
      )
    }
  }, counter)
  return () => page.evaluate((key) => Number(sessionStorage.getItem(key)), counter)
}
