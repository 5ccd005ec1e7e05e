import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import type { TestProject } from 'vitest/node'
import { start as startServices } from '../../../lib/start.ts'
import { start } from '../../launch/started.ts'
import { chromiumHere, noBrowser } from './chromium.ts'

const root = path.resolve(import.meta.dirname, '../../..')

declare module 'vitest' {
  interface ProvidedContext {
    /** A data folder with the demo in it, to be copied and never written to; empty where no journey is made. */
    demoData: string
  }
}

/** Once before all journeys: the pages are built where they are stale, and the demo is planned into a folder to copy. */
export default async function prepare(project: TestProject): Promise<(() => void) | undefined> {
  if (chromiumHere === null) {
    if (noBrowser)
      console.warn('No Chromium was found on this machine: the journeys through a real browser are left out.')
    project.provide('demoData', '')
    return undefined
  }
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-journeys-'))
  const data = path.join(folder, 'demo')
  const server = await start({ PORT: '0', QUIETMETAL_DATA: path.join(folder, 'none') })
  await server.stop()
  const services = await startServices(root, { QUIETMETAL_DATA: data })
  const loaded = await services.loadDemo({ name: 'Visitor', role: 'assistant', device: 'journeys' })
  await services.close()
  if (!loaded.ok) throw new Error(`The demo could not be loaded: ${JSON.stringify(loaded.problems)}`)
  project.provide('demoData', data)
  return () => fs.rmSync(folder, { recursive: true, force: true })
}
