import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { stage } from './setup/stage.ts'

describe.skipIf(noBrowser)('the demo', () => {
  const { visit } = stage('empty')

  test('is loaded with one click on the first morning, and marked as invented wherever its finds show', async () => {
    const page = await visit()
    await page.goto('/')
    await page.getByRole('heading', { name: 'From a bag of records to a plan' }).waitFor()
    await page.getByRole('button', { name: /^Load the demo/ }).click()
    await page.getByText(/Tollgate Wharf, \d+ finds/).waitFor({ timeout: 80_000 })

    const finds = await page.locator('main').innerText()
    expect(Number(/Tollgate Wharf, (\d+) finds/.exec(finds)?.[1])).toBeGreaterThanOrEqual(600)
    const find = await page.locator('main a[href^="/finds/"]').first().getAttribute('href')
    const box = 'TW-B08'
    const shown = [
      '/',
      '/finds',
      '/finds?order=number&q=nail',
      find!,
      '/bench',
      '/store',
      '/contacts',
      `/sheets/bag?box=${box}`,
      `/sheets/supplies?box=${box}`,
      `/sheets/hand-over?box=${box}`,
      '/intake',
    ]
    const unmarked: string[] = []
    for (const path of shown) {
      await page.goto(path)
      const marks = page.locator('main').getByText(/\binvented\b/i)
      await marks
        .first()
        .waitFor({ timeout: 5_000 })
        .catch(() => unmarked.push(path))
    }
    expect(unmarked).toEqual([])
  })

  test('marks every label that is printed', async () => {
    const page = await visit()
    await page.goto('/sheets/bag?box=TW-B08')
    await page.emulateMedia({ media: 'print' })
    const labels = page.locator('[class*="labels"] > li')
    const marked = labels.filter({ hasText: 'Invented for trying out' })
    expect(await labels.count()).toBeGreaterThan(0)
    expect(await marked.count()).toBe(await labels.count())
    await page.locator('main header').getByText('invented').waitFor()
  })
})
