import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import type { Page } from 'playwright-core'
import { recordTable } from '../../lib/tables/write-file.ts'
import { assemblage } from '../demo/assemblage.ts'
import { chance } from '../demo/chance.ts'
import { cellAt, openIntake, pasteCells } from '../journeys/setup/grid.ts'
import { launchChromium } from '../journeys/setup/chromium.ts'
import { start } from '../launch/started.ts'
import { painted, watchKeys, type Keystroke } from './key-to-paint.ts'

/**
 * From a key going down to the paint that shows what it did to the row's plan, in Intake with a long bag. A bare text field
 * in the same browser, typed in at the same pace, says what of it the machine takes for itself.
 */
export interface KeystrokeFigures {
  readonly rows: number
  readonly keystrokes: number
  readonly milliseconds: Spread
  /** Of the keystrokes after which the plan beside the row was drawn otherwise. */
  readonly changedPlan: number
  readonly changedPlanMilliseconds: Spread
  readonly bareFieldMilliseconds: Spread
  /** Processes that wanted to run, on average over the last minute; above the number of cores the machine was busy. */
  readonly load: number
  readonly cores: number
}

export interface Spread {
  readonly median: number
  readonly p95: number
  readonly worst: number
}

const rows = 500
const keystrokes = 200
/** What is typed, by the column it goes in: words that turn the plan round, and long ones that do nothing to it. */
const words: readonly (readonly [number, string])[] = [
  [3, 'lead'],
  [15, '47'],
  [2, 'grenade'],
  [15, '82.5'],
  [3, 'tin'],
  [15, '23'],
  [5, 'waxy'],
  [3, 'iron'],
  [15, '61'],
  [18, 'by the door'],
  [3, 'zinc'],
  [15, '39'],
]

export async function keystrokeFigures(): Promise<KeystrokeFigures> {
  const data = await mkdtemp(path.join(os.tmpdir(), 'quietmetal-bench-'))
  const server = await start({ PORT: '0', QUIETMETAL_DATA: data })
  const browser = await launchChromium()
  try {
    const context = await browser.newContext({
      baseURL: server.address,
      viewport: { width: 1280, height: 900 },
    })
    const bare = await context.newPage()
    await bare.setContent('<input>')
    await bare.locator('input').focus()
    await watchKeys(bare, 'input')
    await typeAtPace(bare, 'the quick brown fox jumps over the lazy dog '.repeat(2))
    const bareField = await painted(bare)
    await bare.close()

    const page = await context.newPage()
    await openIntake(page)
    await pasteBag(page)
    await watchKeys(page, '[role=row] > :last-child')
    await typeHereAndThere(page)
    const seen = await painted(page)
    const changed = seen.filter((key) => key.changed)
    return {
      rows,
      keystrokes: seen.length,
      milliseconds: spread(seen),
      changedPlan: changed.length,
      changedPlanMilliseconds: spread(changed),
      bareFieldMilliseconds: spread(bareField),
      load: os.loadavg()[0]!,
      cores: os.availableParallelism(),
    }
  } finally {
    await browser.close()
    await server.stop()
    await rm(data, { recursive: true })
  }
}

async function pasteBag(page: Page): Promise<void> {
  await cellAt(page, 0, 0).click()
  await pasteCells(page, recordTable(assemblage().records, {}).slice(0, rows + 1))
  await page.getByRole('dialog').getByRole('button', { name: 'Paste', exact: true }).click()
  await page.locator(`[role=grid][aria-rowcount="${rows + 1}"]`).waitFor({ timeout: 30_000 })
  await page.getByText('Kept on this device').waitFor()
}

/** Cells of rows all over the bag, reached by keys. */
async function typeHereAndThere(page: Page): Promise<void> {
  const { whole } = chance(7)
  const press = async (key: string, times = 1) => {
    for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
  }
  let left = keystrokes
  for (let turn = 0; left > 0; turn += 1) {
    const [column, word] = words[turn % words.length]!
    if (turn % 9 === 0) await press('Control+Home')
    await press('PageDown', whole(1, 5))
    await press('ArrowDown', whole(0, 4))
    await press('Home')
    await press('ArrowRight', column)
    await page.waitForTimeout(250)
    await typeAtPace(page, word.slice(0, left))
    left -= word.length
    await press('Enter')
  }
}

/** As people type: 70 to 220 milliseconds from key to key. */
async function typeAtPace(page: Page, text: string): Promise<void> {
  const { whole } = chance(text.length)
  for (const letter of text) {
    await page.keyboard.press(letter === ' ' ? 'Space' : letter)
    await page.waitForTimeout(whole(70, 220))
  }
}

function spread(keys: readonly Keystroke[]): Spread {
  const sorted = keys.map(({ milliseconds }) => milliseconds).toSorted((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN
  return { median: at(0.5), p95: at(0.95), worst: at(1) }
}
