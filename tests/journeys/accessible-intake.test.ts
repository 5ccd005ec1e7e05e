import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { cellAt, openIntake, pasteCells } from './setup/grid.ts'
import { typeAlong } from './setup/keyboard.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { noBrowser } from './setup/chromium.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const phone = { width: 360, height: 740 }

async function typedBag(page: Page): Promise<void> {
  await openIntake(page)
  await cellAt(page, 0, 0).click()
  await typeAlong(page, ['TW-9001', '2001', 'knife', 'iron', 'blade', 'bright-orange-spots'])
  await page.keyboard.press('Enter')
  await typeAlong(page, ['', '', 'grenade', 'iron'])
  await page.keyboard.press('Enter')
  await typeAlong(page, ['', '', 'mount', 'copper alloy'])
  await page.keyboard.press('Control+Enter')
  await page.keyboard.type('leather')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Control+Home')
  await page.getByRole('heading', { name: /^TW-9001/ }).waitFor()
}

async function offeredWords(page: Page): Promise<void> {
  await openIntake(page)
  await cellAt(page, 0, 5).click()
  await page.keyboard.type('bl')
  await page.keyboard.press('ArrowDown')
  await page.getByRole('option', { selected: true }).waitFor()
}

async function flawedCells(page: Page): Promise<void> {
  await openIntake(page)
  await cellAt(page, 0, 0).click()
  await typeAlong(page, ['TW-9001', '2001', 'knife', 'irn', '', 'blue dust'])
  await page.keyboard.press('Enter')
  await typeAlong(page, ['', '', 'hand grenade'])
  await page.keyboard.press('Control+Home')
  await page.keyboard.press('Delete')
  for (let cell = 0; cell < 3; cell += 1) await page.keyboard.press('ArrowRight')
  await page
    .getByText(/names a hazard/)
    .first()
    .waitFor()
}

async function preview(page: Page): Promise<void> {
  await openIntake(page)
  await cellAt(page, 0, 0).click()
  await pasteCells(
    page,
    Array.from({ length: 12 }, (_, at) => [`TW-${at}`, '2001', 'nail', 'iron', 'a long word of its own']),
  )
  await page.getByRole('dialog').waitFor()
}

async function bagKept(page: Page): Promise<void> {
  await typedBag(page)
  await page.getByRole('button', { name: /^Keep 3 finds/ }).click()
  await page.getByText(/records? kept/).waitFor()
}

const states: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['with nothing typed', openIntake],
  ['with a bag typed, a stop and a question', typedBag],
  ['with words offered for a cell', offeredWords],
  ['with cells that are not understood and a danger in one', flawedCells],
  ['with a block about to be pasted', preview],
  ['with a bag just kept', bagKept],
]

describe.skipIf(noBrowser)('Intake', () => {
  const { visit } = stage('empty')

  test.each(states)('%s can be seen by everybody', async (_, reach) => {
    const page = await visit({ person: assistant })
    await reach(page)
    await unfold(page)
    expect(await flawsOfLook(page)).toEqual([])
  })

  test.each([
    ['a wide window', undefined],
    ['a phone', phone],
  ])('is walked through by Tab in %s, cell by cell, and nothing hides the cell', async (_, viewport) => {
    const page = await visit({ person: assistant, options: viewport === undefined ? {} : { viewport } })
    await typedBag(page)
    expect(await flawsOfTabWalk(page)).toEqual([])
  })

  test('asks who sits there before it keeps anything, and offers the way', async () => {
    const page = await visit()
    await openIntake(page)
    await page.locator('main').getByRole('link', { name: 'Say who you are' }).waitFor()
    expect(await flawsOfLook(page)).toEqual([])
  })
})
