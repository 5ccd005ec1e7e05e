import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { flawsOfLook } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const rows = [
  'find_number,material,object,notes,drawer',
  'TW-1,iron,knife,,3',
  'TW-2,irn,nail,,4',
  ',,,looks like a hand grenade,5',
]
const file = (name: string, content: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(content) })

async function choose(page: Page, name: string, content: string): Promise<void> {
  await openPage(page, '/import')
  const project = page.getByLabel('Name of the new project')
  if (await project.isVisible()) await project.fill('Trial')
  await page.getByLabel(/Choose a file/).setInputFiles(file(name, content))
}

async function dryRun(page: Page): Promise<void> {
  await choose(page, 'summer.csv', rows.join('\n'))
  await page.getByRole('heading', { name: 'What summer.csv would bring' }).waitFor()
}

async function done(page: Page): Promise<void> {
  await dryRun(page)
  await page.getByRole('button', { name: /^Keep \d/ }).click()
  await page.getByRole('heading', { name: 'summer.csv is in' }).waitFor()
}

async function noRecords(page: Page): Promise<void> {
  await choose(page, 'page.csv', '<!DOCTYPE html><html></html>')
  await page.getByText(/This is a web page/).waitFor()
}

async function refused(page: Page): Promise<void> {
  await openPage(page, '/import')
  await page.context().clearCookies({ name: 'quietmetal-person' })
  await page.getByLabel(/Choose a file/).setInputFiles(file('summer.csv', rows.join('\n')))
  await page.locator('main').getByRole('alert').waitFor()
}

describe.skipIf(noBrowser)('an import', () => {
  const { visit } = stage('empty')

  test.each([
    ['looked at before it is kept', dryRun],
    ['that is done', done],
    ['of a file that holds no records', noRecords],
    ['that is refused', refused],
  ])('%s can be seen and used by everybody', async (_, reach) => {
    const page = await visit({ person: assistant })
    await reach(page)
    expect(await flawsOfTabWalk(page)).toEqual([])
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('tells those who listen that the file is read, and takes them to what was found', async () => {
    const page = await visit({ person: assistant })
    await dryRun(page)
    const focused = page.locator(':focus')
    expect(await focused.innerText()).toBe('What summer.csv would bring')
  })
})
