import { afterEach, describe, expect, it } from 'vitest'
import { connect, type Connected } from '../../lib/database/engine.ts'
import { migrate } from '../../lib/database/migrate.ts'
import { steps, type Step } from '../../lib/database/migrations.ts'
import { emptyPlace, engines } from './engines.ts'

describe.each(engines)('migrating on %s', (engine) => {
  const open: (() => Promise<void>)[] = []
  afterEach(async () => {
    for (const close of open.splice(0).reverse()) await close()
  })

  async function connections(count: number): Promise<readonly Connected[]> {
    const { where, clear } = await emptyPlace(engine)
    open.push(clear)
    return Array.from({ length: count }, () => {
      const one = connect(where)
      open.push(one.close)
      return one
    })
  }

  it('takes every step once', async () => {
    const [one] = await connections(1)
    expect(await migrate(one!.writer)).toEqual(steps.map(({ name }) => name))
    expect(await migrate(one!.writer)).toEqual([])
  })

  it('goes on after the step that broke', async () => {
    const [one] = await connections(1)
    let broken = true
    const risky: Step = {
      name: 'risky',
      run: async () => {
        if (broken) throw new Error('power cut')
      },
    }
    const list = [steps[0]!, risky, steps[1]!]
    await expect(migrate(one!.writer, list)).rejects.toThrow('power cut')
    broken = false
    expect(await migrate(one!.writer, list)).toEqual(['risky', steps[1]!.name])
  })

  it('lets one process at a time do it', async () => {
    const [one, other] = await connections(2)
    const taken = await Promise.all([migrate(one!.writer), migrate(other!.writer)])
    expect(taken.flat()).toEqual(steps.map(({ name }) => name))
  })

  it('may run a step again that was done and not yet noted', async () => {
    const [one] = await connections(1)
    await migrate(one!.writer)
    await one!.writer.deleteFrom('migration').execute()
    expect(await migrate(one!.writer)).toEqual(steps.map(({ name }) => name))
  })
})
