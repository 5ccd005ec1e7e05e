import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { stage, type Person } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const manager: Person = { name: 'Ash Varley', role: 'store-manager' }

const states: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['a year of gel to renew', (page) => openPage(page, '/store/renewals')],
  [
    'hours and oven written wrongly',
    async (page) => {
      await openPage(page, '/store/renewals')
      await page.getByText('Hours, oven and gel of this store').click()
      await page.getByLabel('How long does one box take?').fill('long')
      await page.getByRole('button', { name: 'Keep these' }).click()
      await page.getByRole('link', { name: 'How long does one box take?' }).waitFor()
    },
  ],
  ['water: which room', (page) => openPage(page, '/store/flood')],
  ['water: which boxes', (page) => openPage(page, '/store/flood?room=Metal%20store')],
  [
    'water, with nothing said of it',
    async (page) => {
      await openPage(page, '/store/flood?room=Metal%20store')
      await page.getByRole('button', { name: /^Record/ }).click()
      await page.getByText('Say how the water came.').waitFor()
    },
  ],
  ['the salvage list', (page) => openPage(page, '/sheets/salvage')],
  ['box labels', (page) => openPage(page, '/sheets/box-labels?room=Cold%20room')],
]

describe.skipIf(noBrowser)('sheets of the store', () => {
  const { visit } = stage('demo')

  test.each(states)('%s can be seen and used by everybody', async (_, reach) => {
    const page = await visit({ person: manager })
    await reach(page)
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })
})

describe.skipIf(noBrowser)('sheets of a store that holds nothing', () => {
  const { visit } = stage('empty')

  test.each(['/store/renewals', '/store/flood', '/sheets/salvage', '/sheets/box-labels'])(
    '%s says what will stand here',
    async (path) => {
      const page = await visit({ person: manager })
      await openPage(page, path)
      expect(await flawsOfLook(page)).toEqual([])
    },
  )
})
