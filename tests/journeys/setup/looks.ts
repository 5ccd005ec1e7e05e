import type { Page } from 'playwright-core'
import { axeFlaws } from './axe.ts'

const wide = { width: 1280, height: 900 }
const narrow = { width: 360, height: 740 }
/** 400 % of zoom on a window of 1280 (WCAG 1.4.10). */
const narrowest = { width: 320, height: 640 }

/**
 * Light and dark, wide and narrow. Everything is looked at in two of the four, which differ in both; in the other two only
 * colours, for nothing else depends on both at once.
 */
const looks = [
  { size: wide, colorScheme: 'light', all: true },
  { size: wide, colorScheme: 'dark', all: false },
  { size: narrow, colorScheme: 'light', all: false },
  { size: narrow, colorScheme: 'dark', all: true },
] as const

const colourRules = ['color-contrast', 'link-in-text-block']

/** Everything that keeps somebody from using the page as it stands. */
export async function flawsOfLook(page: Page): Promise<readonly string[]> {
  const flaws: string[] = []
  // A page that follows an answer has its name a moment after its words.
  await page.waitForFunction(() => document.title !== '')
  // What is below the fold is laid out when it is scrolled to; here it is looked at without scrolling.
  await page.addStyleTag({ content: '* { content-visibility: visible !important }' })
  for (const { size, colorScheme, all } of looks) {
    await page.setViewportSize(size)
    await page.emulateMedia({ colorScheme })
    const found = await axeFlaws(page, all ? undefined : colourRules)
    flaws.push(...found.map((flaw) => `${colorScheme} at ${size.width}: ${flaw}`))
  }
  await page.setViewportSize(narrowest)
  flaws.push(...(await sidewaysScroll(page)))
  return flaws
}

/** Unfolds what is folded, so that it is looked at too. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true
  })
}

/** Text must not be read by scrolling to and fro: only tables and the grid may, inside themselves. */
async function sidewaysScroll(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement
    if (scrollWidth <= clientWidth) return []
    const wide = [...document.querySelectorAll('body *')].filter(
      (one) => one.getBoundingClientRect().right > clientWidth + 1,
    )
    const named = wide.slice(-3).map((one) => `${one.tagName} ${one.textContent.slice(0, 40)}`)
    return [`scrolls sideways at ${clientWidth}: ${scrollWidth} wide; ${named.join(' | ')}`]
  })
}
