import fs from 'node:fs'
import path from 'node:path'
import { chromium, type Browser } from 'playwright-core'

const names = ['chromium', 'chromium-browser', 'google-chrome']

/** The machine's own Chromium; none is brought along. Null where there is none. */
export const chromiumHere: string | null =
  (process.env['PATH'] ?? '')
    .split(path.delimiter)
    .flatMap((folder) => names.map((name) => path.join(folder, name)))
    .find((file) => fs.existsSync(file)) ?? null

/** Where a browser is a must, a missing one fails every journey instead of leaving it out. */
export const noBrowser = chromiumHere === null && process.env['QUIETMETAL_REQUIRE_BROWSER'] !== '1'

export async function launchChromium(): Promise<Browser> {
  if (chromiumHere === null) throw new Error('No Chromium was found on this machine.')
  return chromium.launch({
    executablePath: chromiumHere,
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--no-first-run',
    ],
  })
}
