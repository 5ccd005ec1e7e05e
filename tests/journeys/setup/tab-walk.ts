import type { Page } from 'playwright-core'

const most = 150

interface Stop {
  readonly words: string
  readonly flaws: readonly string[]
}

/** Goes through the page by Tab and gives what is wrong with its stops: too small, hidden, or without a mark of focus. */
export async function flawsOfTabWalk(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => {
    scrollTo(0, 0)
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
  })
  const flaws: string[] = []
  for (let stop = 0; stop < most; stop += 1) {
    await page.keyboard.press('Tab')
    const here = await stopHere(page)
    if (here === null) break
    flaws.push(...here.flaws.map((flaw) => `${here.words}: ${flaw}`))
  }
  return flaws
}

/** The element that has focus; null past the last one. */
function stopHere(page: Page): Promise<Stop | null> {
  return page.evaluate(() => {
    const here = document.activeElement
    if (here === null || here === document.body) return null
    const words = `${here.tagName} “${(here.getAttribute('aria-label') ?? here.textContent).trim().slice(0, 50)}”`
    // A radio button is pressed by its label, all of it.
    const target = here instanceof HTMLInputElement ? (here.closest('label') ?? here) : here
    const { width, height } = target.getBoundingClientRect()
    const style = getComputedStyle(here)
    const flaws: string[] = []

    // WCAG 2.5.8 lets a link within a sentence be as tall as its line.
    const inSentence =
      style.display === 'inline' &&
      here.parentElement !== null &&
      here.parentElement.textContent.trim().length > here.textContent.trim().length
    if (!inSentence && (width < 24 || height < 24)) {
      flaws.push(`the target is ${Math.round(width)} by ${Math.round(height)}`)
    }

    // WCAG 2.4.11: something of it must be seen, whatever sticks to the edges of the window.
    const seen = [...here.getClientRects()].some((box) => {
      const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)]
      const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)]
      return [0.1, 0.3, 0.5, 0.7, 0.9].some((along) =>
        [0.1, 0.5, 0.9].some((down) => {
          const above = document.elementFromPoint(left + (right - left) * along, top + (bottom - top) * down)
          return above !== null && (here.contains(above) || target.contains(above))
        }),
      )
    })
    if (!seen) flaws.push('focus cannot be seen')
    const marked = [style.outlineStyle, getComputedStyle(target).outlineStyle].some((line) => line !== 'none')
    if (!marked && style.boxShadow === 'none') flaws.push('nothing marks the focus')
    return { words, flaws }
  })
}
