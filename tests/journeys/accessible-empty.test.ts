import { describe, expect, test } from 'vitest'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const pages = [
  '/',
  '/finds',
  '/bench',
  '/store',
  '/contacts',
  '/person',
  '/import',
  '/sheets/bag',
  '/sheets/supplies',
  '/sheets/hand-over',
  '/sources',
  '/sources/figures',
  '/sources/works',
  '/sources/methods',
  '/sources/words',
  '/sources/figures/iron-chloride-rh-ceiling',
  '/sources/works/common-practice',
  '/sources/decisions/storage-humidity',
  '/sources/contested/iron-humidity',
  '/sources/evidence',
  '/sources/evidence/white-skin',
  '/nothing-of-this-name',
]

describe.skipIf(noBrowser)('before anything is recorded', () => {
  const { visit } = stage('empty')
  const titles = new Map<string, string>()

  test.each(pages)('%s can be seen and used by everybody', async (path) => {
    const page = await visit({ person: assistant })
    await openPage(page, path)
    titles.set(path, await page.title())
    expect(await flawsOfTabWalk(page)).toEqual([])
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('every page has a title of its own', () => {
    expect([...titles.values()].filter((title) => title === '')).toEqual([])
    expect(new Set(titles.values()).size).toBe(titles.size)
  })
})
