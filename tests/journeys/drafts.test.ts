import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { cellAt, openIntake } from './setup/grid.ts'
import { typeAlong } from './setup/keyboard.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'

const notes = 18

/** As a tab ends that the system takes away: nothing of the page runs any more. */
async function kill(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const crashed = page.waitForEvent('crash')
  // A page that is gone never answers.
  void session.send('Page.crash').catch(() => undefined)
  await crashed
}

describe.skipIf(noBrowser)('what is typed in Intake', () => {
  const { visit } = stage('empty')

  test('is there again after a reload, undo steps and all', async () => {
    const page = await visit({ person: assistant })
    await openIntake(page)
    await cellAt(page, 0, 0).click()
    await typeAlong(page, ['TW-8001', '2200', 'nail', 'iron'])
    await page.keyboard.press('Enter')
    await page.getByText('Keeping on this device').waitFor()
    await page.getByText('Kept on this device').waitFor()
    await openIntake(await page.reload().then(() => page))
    expect(await cellAt(page, 0, 0).innerText()).toBe('TW-8001')
    expect(await cellAt(page, 0, 3).innerText()).toMatch(/iron/i)
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await page.locator('[role=grid]').getAttribute('aria-rowcount')).toBe('2')
  })

  test('loses at most the last second when the tab is killed while somebody types without a pause', async () => {
    const page = await visit({ person: assistant })
    await openIntake(page)
    await cellAt(page, 0, 0).click()
    await typeAlong(page, ['TW-8101', '2200', 'nail', 'iron'])
    await page.keyboard.press('Enter')
    await cellAt(page, 0, notes).click()
    // A long note, all in one cell that is never left: the number tells when each word was typed.
    const began = Date.now()
    let killed = 0
    for (let word = 0; Date.now() - began < 3_500; word += 1) {
      killed = Date.now() - began
      await page.keyboard.type(`${String(killed).padStart(4, '0')} `, { delay: 25 })
    }
    await kill(page)
    const again = await page.context().newPage()
    await openIntake(again)
    expect(await cellAt(again, 0, 0).innerText()).toBe('TW-8101')
    const kept = (await cellAt(again, 0, notes).innerText()).match(/\d{4}/g)
    expect(killed - Number(kept?.at(-1))).toBeLessThanOrEqual(1_000)
  })
})
