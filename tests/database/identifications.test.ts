import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { given, type Outcome } from '../../lib/base/outcome.ts'
import type { Trouble } from '../../lib/base/trouble.ts'
import type { NewIdentification } from '../../lib/services/identification.ts'
import type { Writes } from '../../lib/services/ports.ts'
import { engines, openEmpty, type Opened } from './engines.ts'
import { assistant, day } from './samples.ts'

function value<Value>(outcome: Outcome<Value, Trouble>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

describe.each(engines)('identifications on %s', (engine) => {
  let opened: Opened
  beforeAll(async () => {
    opened = await openEmpty(engine)
  })
  afterAll(() => opened.close())

  const write = async <Value>(work: (writes: Writes) => Promise<Value>) =>
    value(await opened.store.write('test', assistant, async (writes) => given(await work(writes))))

  it('are entered once, never changed, and come back in the order of their entering with what was thought', async () => {
    const { projectId, findId, recordId } = await write(async (writes) => {
      const project = await writes.projects.add({ name: 'Identified', invented: true })
      const site = await writes.sites.ensure(project.id, 'TW')
      const [find] = await writes.finds.ensure(site, ['TW-1'])
      const record = {
        find_number: 'TW-1',
        components: [{ component: 'body', role: 'body', material: 'iron' }],
      }
      const [id] = await writes.records.add([
        { findId: find!.id, record: record as never, contentHash: 'a', importId: null },
      ])
      return { projectId: project.id, findId: find!.id, recordId: id! }
    })
    const one: NewIdentification = {
      projectId,
      findId,
      recordId,
      knowledge: 'k',
      given: {
        component: 'body',
        matter: 'white-skin',
        interpretation: 'tinning',
        method: 'sem-eds',
        on: day('2026-05-01'),
        byWhom: 'the laboratory',
        reference: 'R 7',
        words: '',
      },
      thought: {
        rivals: [{ interpretation: 'tinning', probability: 0.6, range: [0.4, 0.8] }],
        observed: [{ group: 'skin-edge', state: 'drips' }],
      },
    }
    const better = { ...one, given: { ...one.given, interpretation: 'silvering', on: day('2026-06-01') } }
    expect(await write((writes) => writes.identifications.add(one))).toBe(true)
    expect(await write((writes) => writes.identifications.add(one))).toBe(false)
    expect(await write((writes) => writes.identifications.add(better))).toBe(true)
    const kept = await write((writes) => writes.identifications.ofFinds([findId, 'nobody']))
    expect(kept.map((entry) => entry.given.interpretation)).toEqual(['tinning', 'silvering'])
    expect(kept[0]).toMatchObject({ ...one, by: { name: assistant.name } })
    expect(await write((writes) => writes.identifications.ofProject(projectId))).toEqual(kept)
    expect(await write((writes) => writes.identifications.ofProject('nobody'))).toEqual([])
  })
})
