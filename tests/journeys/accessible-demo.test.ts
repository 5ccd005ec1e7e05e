import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { findsOf, openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const first = (asked: string) => async (page: Page) => (await findsOf(page, asked))[0]!

/** The plan as it was once issued, reached as a person would. */
async function pastPlan(page: Page): Promise<string> {
  await openPage(page, await first('stops=1')(page))
  return (await page
    .getByRole('link', { name: /^Plan issued for/ })
    .first()
    .getAttribute('href'))!
}

async function earlierImport(page: Page): Promise<string> {
  await openPage(page, '/import')
  return (await page.locator('main a[href^="/import/"]').first().getAttribute('href'))!
}

const states: readonly (readonly [string, string | ((page: Page) => Promise<string>)])[] = [
  ['the start page', '/'],
  ['the finds', '/finds'],
  ['a search without a match', '/finds?q=nothing-like-it'],
  ['a find', first('q=nail&urgency=weeks')],
  ['a find whose parts do not agree', first('band=conflict')],
  ['a find with much to explain', first('q=TW-0023')],
  ['a find with a stop', first('stops=1')],
  ['a find to be kept wet', first('band=wet')],
  ['a plan of the past', pastPlan],
  ['surfaces searched without a match', '/sources/evidence?q=nothing-like-it'],
  ['the bench', '/bench'],
  ['analyses, before hours are given', '/bench/analyses'],
  ['analyses chosen for some hours', '/bench/analyses?xrf=4&x-radiography=2'],
  ['analyses for hours that nobody can read', '/bench/analyses?xrf=many'],
  ['the store', '/store'],
  ['who to call', '/contacts'],
  ['the bag sheet', '/sheets/bag?box=TW-B08'],
  ['the supplies list', '/sheets/supplies?box=TW-B08'],
  ['the hand-over sheet', '/sheets/hand-over?box=TW-B08'],
  ['the imports', '/import'],
  ['an import', earlierImport],
]

describe.skipIf(noBrowser)('with the demo in it', () => {
  const { visit } = stage('demo')
  const titles = new Map<string, string>()

  test.each(states)('%s can be seen and used by everybody', async (_, place) => {
    const page = await visit({ person: assistant })
    const path = typeof place === 'string' ? place : await place(page)
    await openPage(page, path)
    titles.set(path.split('?')[0]!, await page.title())
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('every page has a title of its own', () => {
    expect(new Set(titles.values()).size).toBe(titles.size)
  })
})
