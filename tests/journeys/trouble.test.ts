import { DatabaseSync } from 'node:sqlite'
import { describe, expect, test } from 'vitest'
import { cellAt, openIntake } from './setup/grid.ts'
import { typeAlong } from './setup/keyboard.ts'
import { flawsOfLook } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

describe.skipIf(noBrowser)('when something breaks', () => {
  const { visit, database, server } = stage('empty')

  /** Takes a table away under the running server, as a damaged disk might, and puts it back afterwards. */
  async function without(table: string, walk: () => Promise<void>): Promise<void> {
    const rename = (from: string, to: string) => {
      const connection = new DatabaseSync(database(), { timeout: 5_000 })
      connection.exec(`alter table ${from} rename to ${to}`)
      connection.close()
    }
    rename(table, `${table}_gone`)
    try {
      await walk()
    } finally {
      rename(`${table}_gone`, table)
    }
  }

  test('a page that cannot be made says so to everybody, and is there again once mended', async () => {
    const page = await visit({ person: assistant, faultsExpected: true })
    await without('project', async () => {
      await openPage(page, '/finds')
      await page.getByRole('heading', { name: 'This page could not be made' }).waitFor()
      const told = await page.locator('main').innerText()
      expect(told).toContain('The fault is ours, not yours.')
      expect(told).toMatch(/Number: \d+/)
      expect(told).not.toMatch(/sqlite|select|no such table/i)
      expect(await flawsOfTabWalk(page)).toEqual([])
      expect(await flawsOfLook(page)).toEqual([])
    })
    await page.getByRole('button', { name: 'Try again' }).click()
    await page.getByRole('heading', { name: 'Finds', level: 1 }).waitFor()
    expect(server().isRunning()).toBe(true)
  })

  test('a bag that cannot be kept stays in the grid, and is kept at the next try', async () => {
    const page = await visit({ person: assistant, faultsExpected: true })
    await openIntake(page)
    await cellAt(page, 0, 0).click()
    await typeAlong(page, ['TW-8801', '2300', 'nail', 'iron'])
    const keep = page.getByRole('button', { name: 'Keep 1 find in the project' })
    await without('condition_record', async () => {
      await keep.click()
      await page.getByText(/still here/).waitFor()
      expect(await cellAt(page, 0, 0).innerText()).toBe('TW-8801')
    })
    await page.context().setOffline(true)
    await keep.click()
    await page.getByText(/could not be reached/).waitFor()
    expect(await cellAt(page, 0, 0).innerText()).toBe('TW-8801')
    await page.context().setOffline(false)
    await keep.click()
    await page.getByText(/1 record kept/).waitFor()
  })

  test('an import that breaks off says that nothing was kept', async () => {
    const page = await visit({ person: assistant, faultsExpected: true })
    await openPage(page, '/import')
    const project = page.getByLabel('Name of the new project')
    if (await project.isVisible()) await project.fill('Trial')
    const buffer = Buffer.from('find_number,material\nTW-8901,iron\nTW-8902,lead\n')
    await page.getByLabel(/Choose a file/).setInputFiles({ name: 'two.csv', mimeType: 'text/csv', buffer })
    await page.getByRole('heading', { name: 'What two.csv would bring' }).waitFor()
    await without('condition_record', async () => {
      await page.getByRole('button', { name: 'Keep 2 records' }).click()
      await page.locator('main').getByRole('alert').waitFor()
    })
    expect(await page.locator('main').getByRole('alert').innerText()).toMatch(/Nothing of the file was kept/)
    await openPage(page, '/finds?q=TW-8901')
    expect(await page.locator('main').innerText()).toContain('No find matches')
  })
})
