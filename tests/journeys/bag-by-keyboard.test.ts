import { describe, expect, test } from 'vitest'
import { cellAt, gridRows, planBeside } from './setup/grid.ts'
import { countPointers, tabTo, typeAlong } from './setup/keyboard.ts'
import { noBrowser } from './setup/chromium.ts'
import { stage } from './setup/stage.ts'

/** Context, object, material, part, what is seen; the find number counts on by itself. */
const bag = [
  ['2001', 'knife', 'iron', 'blade', 'bright-orange-spots'],
  ['', 'weight', 'lead', 'body', 'white-powder'],
  ['', 'brooch', 'copper alloy', 'body', 'pale-green-powder'],
  ['', 'grenade', 'iron', 'body', ''],
  ['', 'coin', 'silver', 'body', 'black-tarnish'],
]

describe.skipIf(noBrowser)('a bag of five by keyboard alone', () => {
  const { visit } = stage('empty')

  test('from the start page to the finds, and no pointer is used', async () => {
    const page = await visit()
    const pointers = await countPointers(page)
    await page.goto('/')
    await tabTo(page, page.getByRole('link', { name: 'Type or paste a bag' }))
    await page.keyboard.press('Enter')
    await page.locator('[role=grid]').waitFor()

    // Who are you?
    await tabTo(page, page.locator('main').getByRole('link', { name: 'Say who you are' }))
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Who are you?' }).waitFor()
    await tabTo(page, page.getByLabel('Your name'))
    await typeAlong(page, ['Wren Hollis'])
    await page.keyboard.press('Enter')
    await page.locator('[role=grid]').waitFor()

    // The bag, a row at a time; Enter goes on to the next one.
    await tabTo(page, cellAt(page, 0, 0))
    await page.keyboard.type('TW-9001')
    for (const [at, cells] of bag.entries()) {
      if (at > 0) await page.keyboard.press('Enter')
      await page.keyboard.press('Tab')
      await typeAlong(page, cells)
      await expect.poll(() => planBeside(page, at).innerText()).not.toContain('Number and material first')
    }
    expect(await cellAt(page, 4, 0).innerText()).toBe('TW-9005')
    expect(await planBeside(page, 0).innerText()).toMatch(/%/)
    expect(await planBeside(page, 3).innerText()).toMatch(/^Now\n.*\nStop\. /)

    // What to do now for the whole bag: the stop first, with whom to call.
    const doNow = page.getByRole('region', { name: 'Do now' })
    await doNow.getByRole('region', { name: /^Stop/ }).waitFor()
    expect(await doNow.innerText()).toContain('TW-9004')
    expect(await doNow.innerText()).toMatch(/Call /)

    // Look next: the question about the knife is answered, and the answer stands in the sheet.
    for (let up = 0; up < 4; up += 1) await page.keyboard.press('ArrowUp')
    await page.getByRole('heading', { name: /^TW-9001/ }).waitFor()
    const question = page.locator('section[aria-labelledby="look-next"]')
    await question.waitFor()
    const asked = await question.getByRole('heading').innerText()
    await page.keyboard.press('Escape')
    await tabTo(page, question.getByRole('button').first())
    // A button may say below its word how it is told.
    const answer = (await question.getByRole('button').first().innerText()).split('\n')[0]!
    await page.keyboard.press('Enter')
    const chosen = question.getByRole('button', { name: 'That is what I see' })
    if (await chosen.isVisible()) {
      await tabTo(page, chosen)
      await page.keyboard.press('Enter')
    }
    await expect
      .poll(async () => ((await question.count()) === 0 ? '' : question.getByRole('heading').innerText()))
      .not.toBe(asked)
    expect(await gridRows(page).first().innerText()).toContain(answer)
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe('BODY')

    // Kept in the project, and found there.
    await tabTo(page, page.getByRole('button', { name: /^Keep 5 finds/ }))
    await page.keyboard.press('Enter')
    await page.getByText(/5 records kept/).waitFor()
    await tabTo(page, page.getByRole('link', { name: 'Finds', exact: true }))
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Finds', level: 1 }).waitFor()
    const list = page.locator('main')
    expect(await list.innerText()).toContain('5 finds')
    for (const [at, [, object]] of bag.entries()) {
      expect(await list.getByRole('link', { name: `TW-900${at + 1} ${object}` }).count()).toBe(1)
    }
    expect(await list.getByText('invented', { exact: true }).count()).toBe(0)
    expect(await pointers()).toBe(0)
  })
})
