import { describe, expect, test } from 'vitest'
import { noBrowser } from './setup/chromium.ts'
import { findsOf, openPage } from './setup/pages.ts'
import { stage } from './setup/stage.ts'

const conservator = { name: 'Bo Lathe', role: 'conservator' } as const

describe.skipIf(noBrowser)('from something seen to what it was', () => {
  const { visit } = stage('empty')

  test('a white skin is recorded, weighed, looked at closer, sent away and found out', async () => {
    const page = await visit({ person: conservator })
    await openPage(page, '/import')
    const rows = [
      'find_number,object,material,evidence,state_now,burial,date_from,date_to',
      'TW-0901,strap end,copper-alloy,white-metal-sheen,dry,free-draining,1200,1300',
    ].join('\n')
    await page.getByLabel('Name of the new project').fill('One fitting')
    await page
      .getByLabel(/Choose a file/)
      .setInputFiles({ name: 'skin.csv', mimeType: 'text/csv', buffer: Buffer.from(rows) })
    await page.getByRole('button', { name: /^Keep/ }).click()
    await page.getByRole('heading', { name: 'skin.csv is in' }).waitFor()

    const [path] = await findsOf(page, 'q=TW-0901')
    await openPage(page, path!)
    const surface = page.getByRole('region', { name: 'What was this surface?' })
    await surface.getByRole('heading', { name: 'What is the white metal skin?' }).waitFor()
    const standing = () => surface.locator('[data-standing]').first().getAttribute('data-standing')
    expect(await standing()).not.toBe('settled')
    expect(await surface.locator('[data-rival="tinning"]').count()).toBeGreaterThan(0)
    const requests = page.getByRole('region', { name: 'To ask a laboratory' })
    expect(await requests.getByText(/of the question/).count()).toBeGreaterThan(0)

    await openPage(page, '/bench/analyses')
    await page.getByLabel(/X-ray fluorescence/).fill('2')
    await page.getByRole('button', { name: 'Choose the finds' }).click()
    await page
      .getByRole('link', { name: /TW-0901/ })
      .first()
      .waitFor()

    await openPage(page, path!)
    await surface.getByRole('link', { name: 'Enter a result' }).click()
    await page.getByRole('link', { name: 'X-ray diffraction' }).last().click()
    await page.getByLabel('Cassiterite').waitFor()
    await page.getByLabel('Cassiterite').check()
    await page.getByLabel('Whose result is it?').fill('The laboratory')
    await page.getByLabel('What is the white metal skin, then?').selectOption('tinning')
    await page.getByRole('button', { name: 'Keep this result' }).click()
    await page.getByText('It was found to be tinning.').waitFor()
    await page.getByRole('link', { name: 'Back to the find and its plan' }).click()

    await page.getByRole('heading', { name: 'What was found out' }).waitFor()
    await expect.poll(standing).toBe('settled')
    await openPage(page, '/sources/score')
    await page.getByText(/19 more are needed/).waitFor()
  })
})
