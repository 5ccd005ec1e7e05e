import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook } from './setup/looks.ts'
import { findsOf, openPage } from './setup/pages.ts'
import { stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const person = { name: 'Ana Tidewell', role: 'assistant' } as const

describe.skipIf(noBrowser)('looking closer at kept finds, with the demo in it', () => {
  const { visit } = stage('demo')
  const question = (page: Page) => page.locator('#look-next').innerText()
  const pathOf = async (page: Page, find: string) => `${(await findsOf(page, `q=${find}`))[0]}/look`

  test('a question, a list with something ticked and the end of all questions can be seen and used by everybody', async () => {
    const page = await visit({ person })
    const path = await pathOf(page, 'TW-0007')
    await openPage(page, path)
    expect(await flawsOfTabWalk(page)).toEqual([])
    expect(await flawsOfLook(page)).toEqual([])
    const skipped: string[] = []
    for (;;) {
      const fact = page.locator('input[name=fact]')
      if ((await fact.count()) === 0) break
      if (
        (await page.locator('fieldset input').count()) > 0 &&
        !skipped.some((one) => one.endsWith('evidence'))
      ) {
        await page.locator('fieldset input').first().check()
        expect(await flawsOfTabWalk(page)).toEqual([])
        expect(await flawsOfLook(page)).toEqual([])
      }
      skipped.push(await fact.inputValue())
      await openPage(page, `${path}?else=${encodeURIComponent(skipped.map(encodeURIComponent).join(','))}`)
    }
    expect(skipped.length).toBeGreaterThan(1)
    expect(await question(page)).toBe('Enough for now')
    expect(await flawsOfLook(page)).toEqual([])
  })

  test('by keyboard, each answer leads on to the next question', async () => {
    const page = await visit({ person })
    const path = await pathOf(page, 'TW-0008')
    await openPage(page, path)
    const asked = await question(page)
    await page.locator('#look button', { hasText: 'I can’t tell' }).focus()
    await page.keyboard.press('Enter')
    await page.getByText('Kept as a record of today').waitFor()
    await expect.poll(() => question(page)).not.toBe(asked)
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('look-next')
  })

  test('it works without scripts, by the form alone', async () => {
    const scripted = await visit({ person })
    const path = await pathOf(scripted, 'TW-0009')
    const page = await visit({ person, options: { javaScriptEnabled: false } })
    await page.goto(path)
    const asked = await question(page)
    await page.getByRole('button', { name: 'I can’t tell' }).click()
    await page.getByText('Kept as a record of today').waitFor()
    expect(await question(page)).not.toBe(asked)
    await page.getByRole('link', { name: 'Its whole plan' }).click()
    expect(await page.getByText('Ana Tidewell').count()).toBeGreaterThan(0)
  })

  test('whoever has not said who they are is asked first', async () => {
    const page = await visit({})
    await openPage(page, await pathOf(page, 'TW-0010'))
    await page.getByRole('main').getByRole('link', { name: 'Say who you are' }).waitFor()
    await page.getByRole('button', { name: 'I can’t tell' }).click()
    await page.getByRole('heading', { name: 'Who are you?' }).waitFor()
    expect(new URL(page.url()).searchParams.get('back')).toMatch(/^\/finds\/[\w-]+\/look$/)
  })
})
