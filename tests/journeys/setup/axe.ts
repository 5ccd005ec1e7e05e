import fs from 'node:fs'
import path from 'node:path'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

const source = fs.readFileSync(
  path.resolve(import.meta.dirname, '../../../node_modules/axe-core/axe.min.js'),
  'utf8',
)
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

declare global {
  interface Window {
    axe?: { readonly run: (place: Document, options: object) => Promise<AxeResults> }
  }
}

/** What axe holds against the page as it stands, one text a place; of all rules, or only of those named. */
export async function axeFlaws(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  if (!(await page.evaluate(() => window.axe !== undefined))) await page.evaluate(source)
  const runOnly = rules === undefined ? { type: 'tag', values: tags } : { type: 'rule', values: [...rules] }
  return page.evaluate(async (runOnly) => {
    const { violations } = await window.axe!.run(document, { runOnly, resultTypes: ['violations'] })
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
    )
  }, runOnly)
}
