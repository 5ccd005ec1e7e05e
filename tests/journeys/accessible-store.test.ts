import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { stage, type Person } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const manager: Person = { name: 'Ash Varley', role: 'store-manager' }

const log = (name: string, lines: readonly string[]) => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(lines.join('\n')),
})

/** Every date in it is one in either order, and nothing names its clock. */
const openLog = log('open.csv', [
  'time,temperature °C,humidity %',
  ...[1, 2, 3, 4, 5, 6].map((day) => `0${day}/0${day + 1}/2026 08:00,18.2,${10 + day}`),
])

async function box(page: Page, name: string): Promise<void> {
  await openPage(page, '/store?order=urgent')
  await page.getByRole('link', { name, exact: true }).last().click()
  await page.getByRole('heading', { name: `Box ${name}`, level: 1 }).waitFor()
}

async function drawn(page: Page): Promise<void> {
  await page.locator('.recharts-surface').first().waitFor()
}

async function logger(page: Page): Promise<void> {
  await openPage(page, '/store/loggers')
  await page.getByRole('link', { name: 'TW-L05' }).click()
  await page.getByRole('heading', { name: 'Logger TW-L05', level: 1 }).waitFor()
  await drawn(page)
}

async function chooseLog(page: Page): Promise<void> {
  await openPage(page, '/store/loggers/import')
  await page.getByLabel(/Choose logger files/).setInputFiles(openLog)
  await page.getByText('In which order are its dates written?').waitFor()
}

const states: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['the store, room by room', (page) => openPage(page, '/store')],
  ['the store, most pressing first', (page) => openPage(page, '/store?order=urgent')],
  [
    'a box with readings',
    async (page) => {
      await box(page, 'TW-B22')
      await drawn(page)
    },
  ],
  ['a box that nothing was read in', (page) => box(page, 'TW-B60')],
  ['a tub', (page) => box(page, 'TW-B50')],
  [
    'a form with wrong answers',
    async (page) => {
      await box(page, 'TW-B22')
      await page.getByText('I renewed the gel').click()
      await page.getByLabel('How much gel went in? [kg]').fill('much')
      await page.getByRole('button', { name: 'Keep this' }).first().click()
      await page.getByRole('link', { name: 'How much gel went in?' }).waitFor()
    },
  ],
  [
    'a box being mended',
    async (page) => {
      await box(page, 'TW-B22')
      await page.getByRole('link', { name: 'Mend what is written about this box' }).click()
      await page.getByRole('button', { name: 'Keep' }).waitFor()
    },
  ],
  ['a new box', (page) => openPage(page, '/store/boxes/new')],
  [
    'the walk',
    async (page) => {
      await openPage(page, '/store/walk')
      await page.getByRole('button', { name: 'Pass by' }).waitFor()
    },
  ],
  [
    'the walk, a box read',
    async (page) => {
      await openPage(page, '/store/walk?room=Metal%20store')
      await page.getByLabel('10 to 15').check()
      await page.getByRole('button', { name: 'Keep, next box' }).click()
      await page.getByText(/strip between 10 and 15 %/).waitFor()
    },
  ],
  ['the register of loggers', (page) => openPage(page, '/store/loggers')],
  ['a logger', logger],
  ['bringing in logger files', (page) => openPage(page, '/store/loggers/import')],
  ['a logger file that leaves something open', chooseLog],
]

describe.skipIf(noBrowser)('the store of the demo', () => {
  const { visit } = stage('demo')
  const titles = new Map<string, string>()

  test.each(states)('%s can be seen and used by everybody', async (_, reach) => {
    const page = await visit({ person: manager })
    await reach(page)
    titles.set(new URL(page.url()).pathname, await page.title())
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('every page has a title of its own', () => {
    expect(new Set(titles.values()).size).toBe(titles.size)
  })
})

describe.skipIf(noBrowser)('the store before anything is in it', () => {
  const { visit } = stage('empty')

  test.each(['/store', '/store/walk', '/store/loggers', '/store/loggers/import', '/store/boxes/new'])(
    '%s says what it will show and how to begin',
    async (path) => {
      const page = await visit({ person: manager })
      await openPage(page, path)
      expect(await page.getByRole('link', { name: 'Import a file' }).first().isVisible()).toBe(true)
      expect(await flawsOfTabWalk(page)).toEqual([])
      expect(await flawsOfLook(page)).toEqual([])
    },
  )
})
