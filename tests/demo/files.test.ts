import { readFile } from 'node:fs/promises'
import { describe, expect, test } from 'vitest'
import * as ids from '../../lib/record/ids.ts'
import { readLook } from '../../lib/record/look.ts'
import { readTest } from '../../lib/record/tests.ts'
import { noneOfThese } from '../../lib/services/identification.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { assemblage } from './assemblage.ts'
import { demoFiles } from './files.ts'
import { rooms } from './store.ts'
import { raisedIn } from './truth-draw.ts'
import { truths } from './truths.ts'

const { records, boxes } = assemblage()
const files = await demoFiles()
const parts = records.flatMap(({ components }) => components)
const missing = (all: readonly string[], met: readonly (string | undefined)[]) =>
  all.filter((id) => !met.includes(id))

describe('Tollgate Wharf', () => {
  test.each([
    'tollgate-wharf.csv',
    'rooms.csv',
    'boxes.csv',
    'loggers.csv',
    'rounds.csv',
    'diary.csv',
    'identifications.csv',
    'logs/metal-store-room.csv',
    'logs/box-10.txt',
    'logs/box-5-stick.txt',
    'logs/box-22.txt',
  ])('%s is what the seed gives', async (name) => {
    const kept = await readFile(new URL(`../../content/demo/${name}`, import.meta.url), 'utf8')
    expect(kept).toBe(files.get(name))
  })

  test('is as large as a season leaves behind', () => {
    const looks = Map.groupBy(records, ({ find_number }) => find_number)
    const watched = [...looks.values()].filter((of) => of.length > 1)
    expect(looks.size).toBeGreaterThanOrEqual(600)
    expect(watched.length).toBeGreaterThanOrEqual(40)
    expect(Math.max(...watched.map((of) => of.length))).toBeLessThanOrEqual(5)
    expect([rooms.length, boxes.length]).toEqual([4, 60])
  })

  test('meets every material, burial, hazard, sign and trace of the contract', () => {
    expect(
      missing(
        ids.material,
        parts.map(({ material }) => material),
      ),
    ).toEqual([])
    expect(
      missing(
        ids.burial,
        records.flatMap(({ burial }) => burial ?? []),
      ),
    ).toEqual([])
    expect(
      missing(
        ids.hazardsNoticed,
        records.flatMap(({ hazards_noticed }) => hazards_noticed ?? []),
      ),
    ).toEqual([])
    expect(
      missing(
        ids.seen,
        parts.flatMap(({ seen }) => seen ?? []),
      ),
    ).toEqual([])
    expect(
      missing(
        ids.evidence,
        parts.flatMap(({ evidence }) => evidence ?? []),
      ),
    ).toEqual([])
  })

  test('has finds whose truth is known to whoever made it up, in words of the evidence base', () => {
    expect(truths.length).toBeGreaterThanOrEqual(40)
    expect(new Set(truths.map(({ matter }) => matter)).size).toBeGreaterThanOrEqual(15)
    const newest = new Map(records.map((record) => [record.find_number, record]))
    const wrong = truths.flatMap(({ find, component, matter, truth, looked, tests, found }) => {
      const raised = raisedIn(newest.get(find)!, knowledge).find(
        (one) => one.matter.id === matter && one.component === component,
      )
      const known = raised?.matter.rivals.some(({ id }) => id === truth) ?? false
      const readable = looked.every((text) => readLook(text).ok) && tests.every((text) => readTest(text).ok)
      const method = found === null || knowledge.methods[found.method] !== undefined
      return (known || truth === noneOfThese) && raised && readable && method ? [] : [find]
    })
    expect(wrong).toEqual([])
  })

  test('is mostly dull iron', () => {
    const iron = records.filter(({ components }) =>
      components.some(({ material }) => ['iron', 'cast-iron', 'steel'].includes(material)),
    )
    expect(iron.length / records.length).toBeGreaterThan(0.45)
  })
})
