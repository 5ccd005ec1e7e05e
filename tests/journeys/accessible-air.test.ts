import path from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { start as startServices } from '../../lib/start.ts'
import { noBrowser } from './setup/chromium.ts'
import { flawsOfLook, unfold } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { assistant, stage } from './setup/stage.ts'
import { flawsOfTabWalk } from './setup/tab-walk.ts'

const root = path.resolve(import.meta.dirname, '../..')

/** By keyboard as it stands, by eye with everything unfolded. */
async function flawsOf(page: Page): Promise<readonly string[]> {
  const walked = await flawsOfTabWalk(page)
  await unfold(page)
  return [...walked, ...(await flawsOfLook(page))]
}

const fill = (page: Page, label: string, text: string) =>
  page.getByLabel(label, { exact: false }).first().fill(text)

describe.skipIf(noBrowser)('air and humidity before anything is recorded', () => {
  const { visit, database } = stage('empty')

  test.each(['/store/air', '/store/climate'])('%s can be seen and used by everybody', async (place) => {
    const page = await visit({ person: assistant })
    await openPage(page, place)
    expect(await flawsOf(page)).toEqual([])
  })

  test('a store without a coupon is told how one is hung', async () => {
    const services = await startServices(root, { QUIETMETAL_DATA: path.dirname(database()) })
    const by = { ...assistant, device: 'journeys' }
    await services.startProject({ name: 'Tollgate Wharf' }, by)
    await services.close()
    // Nobody has said who they are: the page says so beside its form.
    const page = await visit()
    await openPage(page, '/store/air')
    await page.getByRole('heading', { name: 'How a coupon is hung and weighed' }).waitFor()
    expect(await flawsOf(page)).toEqual([])
  })
})

describe.skipIf(noBrowser)('air and humidity with the demo in it', () => {
  const { visit } = stage('demo')

  test('a coupon is entered: every fault at once, then its class', async () => {
    const page = await visit({ person: assistant })
    await openPage(page, '/store/air')
    await page.getByText('I weighed a coupon').click()
    await page.getByRole('button', { name: 'Keep the coupon' }).click()
    await page.getByText('6 answers need another look.').waitFor()
    await fill(page, 'Anything else worth knowing', 'beside the door')
    expect(await flawsOf(page)).toEqual([])
    await page.getByLabel('Of which metal?').selectOption('copper')
    await page.getByLabel('In which room?').selectOption({ index: 1 })
    await fill(page, 'All its faces together', '40')
    await fill(page, 'Days it hung', '365')
    await page.getByLabel('How was it weighed?').selectOption('mass-loss')
    await fill(page, 'How much heavier', '0,16')
    await fill(page, 'How far may the two', '0,01')
    await page.getByRole('button', { name: 'Keep the coupon' }).click()
    await page.getByText('Kept in the diary.').waitFor()
    await page.getByRole('heading', { name: 'Class IC1 (very low) by the copper coupon.' }).first().waitFor()
    await page.getByText('beside the door').first().waitFor()
    expect(await flawsOf(page)).toEqual([])
  })

  test('outdoors is estimated, and refused indoors and out of range with every reason', async () => {
    const page = await visit({ person: assistant })
    await openPage(page, '/store/air')
    await page.getByRole('button', { name: 'Estimate' }).click()
    await page.getByRole('link', { name: 'Chloride settling' }).waitFor()
    await fill(page, 'Mean temperature of the year', '10')
    await fill(page, 'Mean relative humidity of the year', '15')
    await fill(page, 'Sulphur dioxide settling', '10')
    await fill(page, 'Chloride settling', '900')
    await page.getByRole('button', { name: 'Estimate' }).click()
    await page.getByText('the equations were fitted from 34 to 93').waitFor()
    expect(await page.getByText('say nothing beyond').count()).toBe(2)
    await fill(page, 'Mean relative humidity of the year', '75')
    await fill(page, 'Chloride settling', '5')
    await page.getByRole('button', { name: 'Estimate' }).click()
    await page
      .getByRole('heading', { name: 'Outdoors, bare steel: class C2 (low) or C3 (medium).' })
      .waitFor()
    expect(await flawsOf(page)).toEqual([])
    await page.getByLabel('Where is this air?').selectOption('indoors')
    await page.getByRole('button', { name: 'Estimate' }).click()
    await page.getByText('hang coupons there').waitFor()
  })

  test('humidity is answered without a network, and printed as a table', async () => {
    const page = await visit({ person: assistant })
    await openPage(page, '/store/climate')
    await page.context().setOffline(true)
    await fill(page, 'Relative humidity of the room', '15')
    await page.getByText('Anything at -6.6 °C or colder gathers frost in this air.').first().waitFor()
    await fill(page, 'Temperature of the wall', 'cold')
    await page.getByLabel('A bare find').check()
    await page.getByText('“cold” is no number').waitFor()
    await page.getByRole('button', { name: 'Show the table' }).click()
    expect(await flawsOf(page)).toEqual([])
    await page.getByRole('button', { name: 'Fold the table' }).click()
    await page.emulateMedia({ media: 'print' })
    expect(await page.getByRole('table', { includeHidden: false }).count()).toBe(1)
    expect(await page.getByRole('heading', { name: 'How long until it is warm?' }).isVisible()).toBe(false)
  })
})
