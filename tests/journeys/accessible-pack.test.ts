import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { stage, type Person } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const manager: Person = { name: 'Ash Varley', role: 'store-manager' }

const firstMove = (page: Page) => page.getByRole('button', { name: /^It is there now/ }).first()

const states: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['a packing as it stands', (page) => openPage(page, '/store/pack')],
  [
    'a packing anew, with more boxes',
    async (page) => {
      await openPage(page, '/store/pack')
      await page.getByLabel(/^anew/).check()
      await page.getByText('Boxes you could get').click()
      await page
        .getByLabel(/^More of/)
        .first()
        .fill('2')
      await page.getByRole('button', { name: 'Propose' }).click()
      await page.waitForURL(/begin=afresh/)
      await page.getByRole('heading', { name: 'Moving list' }).waitFor()
    },
  ],
]

describe.skipIf(noBrowser)('packing the store', () => {
  const { visit } = stage('demo')

  test.each(states)('%s can be seen and used by everybody', async (_, reach) => {
    const page = await visit({ person: manager })
    await reach(page)
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('a find is moved when somebody says so, and not before', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/pack')
    const said = await firstMove(page).innerText()
    const [, find, box] = /, (\S+) in (\S+)/.exec(said)!
    await firstMove(page).click()
    await page.getByText(`Kept: it is in ${box}.`).waitFor()
    await page.getByRole('link', { name: box!, exact: true }).first().click()
    await page.getByRole('heading', { name: `Box ${box}`, level: 1 }).waitFor()
    const there = page.getByRole('link', { name: new RegExp(find!) }).first()
    await there.waitFor()
    expect(await there.isVisible()).toBe(true)
  })

  test('on paper it is the moving list with squares to tick, without what is for the screen', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/pack')
    await page.emulateMedia({ media: 'print' })
    expect(await firstMove(page).isVisible()).toBe(false)
    expect(await page.getByRole('heading', { name: 'Moving list' }).isVisible()).toBe(true)
    expect(await page.getByRole('heading', { name: /boxes would stand/ }).isVisible()).toBe(false)
  })
})

describe.skipIf(noBrowser)('packing a store that holds nothing', () => {
  const { visit } = stage('empty')

  test('says what will stand here', async () => {
    const page = await visit({ person: manager })
    await openPage(page, '/store/pack')
    expect(await flawsOfLook(page)).toEqual([])
  })
})
