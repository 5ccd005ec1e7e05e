import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { saved } from './setup/files.ts'
import { flawsOfLook } from './setup/looks.ts'
import { openPage } from './setup/pages.ts'
import { leaky, logs, loose, tables } from './setup/small-store.ts'
import { stage, type Person } from './setup/stage.ts'

const manager: Person = { name: 'Ash Varley', role: 'store-manager' }

const devices = [
  ['a desk, on paper', { viewport: { width: 1280, height: 900 }, colorScheme: 'light' }],
  ['a phone, on graphite', { viewport: { width: 390, height: 844 }, colorScheme: 'dark', hasTouch: true }],
] as const

async function bringTables(page: Page): Promise<void> {
  await openPage(page, '/store/tables')
  await page.getByLabel('Name of the new project').fill('Quay store')
  for (const [at, table] of tables.entries()) {
    if (at > 0) await openPage(page, '/store/tables')
    await page.getByLabel(/A table of rooms, boxes/).setInputFiles(table)
    await page.getByRole('button', { name: 'See what it holds' }).click()
    await page.getByText(`${table.name} holds:`).waitFor()
    await page.getByRole('button', { name: 'Keep it' }).click()
    await page.getByText(`${table.name} is in:`).waitFor()
  }
}

async function bringLogs(page: Page): Promise<void> {
  await openPage(page, '/store/loggers/import')
  await page.getByLabel(/Choose logger files/).setInputFiles([logs.withCommas, logs.flat, logs.gap])
  const card = (name: string) => page.getByRole('region', { name })
  await card(logs.withCommas.name).getByText('By which clock were they written?').waitFor({ timeout: 60_000 })
  await card(logs.withCommas.name)
    .getByLabel(/Place of the clock/)
    .fill('Europe/Copenhagen')
  await card(logs.withCommas.name).getByRole('button', { name: 'By this clock' }).click()
  for (const [log, box] of [
    [logs.withCommas, leaky],
    [logs.flat, 'TW-B02'],
    [logs.gap, 'TW-B03'],
  ] as const) {
    const one = card(log.name)
    await one.getByText(new RegExp(`readings belong to box ${box}`)).waitFor()
    const keep = one.getByRole('button', { name: 'Keep this file' })
    await keep.click()
    await one.getByRole('link', { name: /^See logger/ }).waitFor({ timeout: 60_000 })
  }
}

describe.skipIf(noBrowser).each(devices)('a store from nothing, at %s', (_, options) => {
  const { visit } = stage('empty')

  test('ten boxes, three logger files, the box that leaks, its gel, the calendar', async () => {
    const page = await visit({ person: manager, options })
    await bringTables(page)
    expect(await flawsOfLook(page)).toEqual([])
    await bringLogs(page)
    expect(await flawsOfLook(page)).toEqual([])

    // What was special about each file is told on the page of its logger.
    await openPage(page, '/store/loggers')
    await page.getByRole('link', { name: 'TW-L2' }).click()
    await page.getByText(/below/i).first().waitFor()
    expect(await page.locator('main').innerText()).toMatch(/15 %/)
    await openPage(page, '/store/loggers')
    await page.getByRole('link', { name: 'TW-L3' }).click()
    await page.locator('.recharts-surface').first().waitFor()
    expect(await page.locator('main').innerText()).toMatch(/gap|missing|without a reading/i)
    expect(await flawsOfLook(page)).toEqual([])

    // The leak stands first, with since when.
    await openPage(page, '/store?order=urgent')
    expect(await flawsOfLook(page)).toEqual([])
    const worst = page.locator('main section', { hasText: 'to see to' }).getByRole('listitem').first()
    expect(await worst.innerText()).toContain(leaky)
    expect(await worst.innerText()).toMatch(/lid probably not seated since/i)
    await worst.getByRole('link', { name: leaky }).click()
    await page.getByRole('heading', { name: `Box ${leaky}`, level: 1 }).waitFor()
    const since = /not seated since (\d+ \w+ \d{4})/i.exec(await page.locator('main').innerText())
    const days = Math.abs(Date.parse(`${since![1]!} UTC`) / 86_400_000 - loose)
    expect(days).toBeLessThan(21)
    expect(await flawsOfLook(page)).toEqual([])

    // New gel, lid on.
    await page.getByText('I renewed the gel').click()
    await page.getByLabel('How much gel went in?').fill('0,5')
    await page.getByLabel('How dry was it?').fill('5')
    await page.getByRole('button', { name: 'Keep this' }).first().click()
    await page.getByText('Kept. The forecast begins anew').waitFor()
    await page.reload()
    expect(await page.locator('main').innerText()).not.toMatch(/not seated since/i)

    // The calendar leaves.
    await openPage(page, '/store/renewals')
    expect(await flawsOfLook(page)).toEqual([])
    const leaving = page.waitForEvent('download')
    await page.getByRole('link', { name: /Take the calendar along/ }).click()
    const { name, bytes } = await saved(await leaving)
    expect(name).toMatch(/\.ics$/)
    const text = bytes.toString('utf8').replace(/\r\n[ \t]/g, '')
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/)
    expect(text.match(/BEGIN:VEVENT/g)!.length).toBeGreaterThan(0)
    expect(text).toContain('TW-B')
  }, 240_000)
})
