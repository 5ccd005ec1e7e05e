import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest'
import { start, type Started } from '../../launch/started.ts'
import { launchChromium } from './chromium.ts'

export interface Person {
  readonly name: string
  readonly role: 'assistant' | 'conservator' | 'store-manager'
}

export interface Visit {
  /** Who has said before that it is them at this device; nobody where left out. */
  readonly person?: Person
  readonly options?: BrowserContextOptions
  /** Where the journey itself breaks something, the page may complain. */
  readonly faultsExpected?: boolean
}

export interface Stage {
  readonly server: () => Started
  readonly database: () => string
  /** A browser profile of its own: no drafts, no cookies but who sits there. */
  readonly visit: (visit?: Visit) => Promise<Page>
}

export const assistant: Person = { name: 'Wren Hollis', role: 'assistant' }

/** A server over data of its own and a browser, for the journeys of one file. Whatever a page complains of fails its test. */
export function stage(data: 'empty' | 'demo'): Stage {
  const contexts: BrowserContext[] = []
  const complaints: string[] = []
  const closing: (() => unknown)[] = []
  let folder: string
  let server: Started
  let browser: Browser

  beforeAll(async () => {
    browser = await launchChromium()
    closing.push(() => browser.close())
    folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-journey-'))
    closing.push(() => fs.rmSync(folder, { recursive: true, force: true }))
    if (data === 'demo') fs.cpSync(inject('demoData'), folder, { recursive: true })
    server = await start({ PORT: '0', QUIETMETAL_DATA: folder })
    closing.push(() => server.stop())
  })
  afterEach(async () => {
    for (const context of contexts.splice(0)) await context.close()
    expect(complaints.splice(0)).toEqual([])
  })
  afterAll(async () => {
    for (const close of closing.toReversed()) await close()
  })

  const visit = async ({ person, options, faultsExpected = false }: Visit = {}) => {
    const context = await browser.newContext({ locale: 'en-GB', baseURL: server.address, ...options })
    contexts.push(context)
    if (person !== undefined) {
      const value = encodeURIComponent(JSON.stringify({ ...person, device: 'journeys' }))
      await context.addCookies([{ name: 'quietmetal-person', value, url: server.address }])
    }
    const page = await context.newPage()
    if (!faultsExpected) listen(page, complaints)
    return page
  }
  return { server: () => server, database: () => path.join(folder, 'quietmetal.sqlite'), visit }
}

/** Faults of the page, broken hydration, blocked resources, and answers that are the server's own fault. */
function listen(page: Page, complaints: string[]): void {
  page.on('pageerror', (fault) => complaints.push(`${page.url()}: ${fault.message}`))
  page.on('console', (message) => {
    // What an address answers with is told by 'response'; a page that does not exist is no fault.
    if (message.type() !== 'error' || message.text().startsWith('Failed to load resource')) return
    complaints.push(`${page.url()}: ${message.text()}`)
  })
  page.on('response', (answer) => {
    if (answer.status() >= 500) complaints.push(`${answer.url()}: answered with ${answer.status()}`)
  })
}
