import { describe, expect, test } from 'vitest'
import { measuredIsotherm } from '../../lib/climate/isotherm-measured.ts'
import { figureValue } from '../../lib/boxes/figure-value.ts'
import { knowledge } from '../knowledge-at-hand.ts'

describe('cautions of the store', () => {
  const codesOf = (task: string) => knowledge.tasks[task]!.cautions.map(({ code }) => code)

  test('stand where the work is done', () => {
    expect(codesOf('renew-gel')).toEqual(
      expect.arrayContaining(['cobalt-indicator', 'dust', 'do-not-seal-wet']),
    )
    expect(codesOf('dry-gel-in-oven')).toEqual(
      expect.arrayContaining(['regeneration-heat', 'cobalt-indicator', 'dust', 'do-not-heat']),
    )
    expect(codesOf('oxygen-free-pack')).toContain('low-oxygen')
    expect(codesOf('handle-lead')).toEqual(expect.arrayContaining(['lead', 'no-wood-or-card']))
    expect(codesOf('fill-box')).toEqual(expect.arrayContaining(['do-not-seal-wet', 'no-wood-or-card']))
    expect(codesOf('read-strip')).toContain('strip-reading')
    expect(codesOf('calibrate-with-salts')).toContain('salt-brine')
    expect(codesOf('open-tub')).toEqual(expect.arrayContaining(['infection', 'keep-wet']))
    expect(codesOf('wet-rescue')).toEqual(expect.arrayContaining(['flooded-room', 'do-not-seal-wet']))
  })

  test('say the published lines, and where sources part', () => {
    const caution = (task: string, code: string) =>
      knowledge.tasks[task]!.cautions.find((one) => one.code === code)!
    expect(caution('dry-gel-in-oven', 'regeneration-heat').text).toMatch(/No hotter than 120 °C/)
    expect(caution('dry-gel-in-oven', 'regeneration-heat').contested).toBe('gel-regeneration')
    expect(knowledge.contested['gel-regeneration']!.sides.length).toBeGreaterThan(1)
    expect(caution('renew-gel', 'cobalt-indicator').text).toMatch(/since 2008 and again since 2011/)
    expect(caution('oxygen-free-pack', 'low-oxygen')).toMatchObject({ level: 'stop' })
  })

  test('none rests on memory alone and stops', () => {
    for (const { cautions } of Object.values(knowledge.tasks))
      for (const { level, sources } of cautions)
        expect(level === 'stop' && sources.every(({ known }) => known === 'memory')).toBe(false)
  })
})

describe('figures that boxes are reckoned with', () => {
  test('stand in order', () => {
    for (const name of ['gel-reservoir', 'air-exchange-plastic-box']) {
      const [low, nominal, high] = [`${name}-low`, name, `${name}-high`].map((id) =>
        figureValue(knowledge, id),
      )
      expect(low! < nominal! && nominal! < high!).toBe(true)
    }
  })

  test('measured isotherms can be read at their own temperature, over all of their points', () => {
    const branches = Object.values(knowledge.isotherms)
    expect(branches.length).toBeGreaterThanOrEqual(10)
    for (const branch of branches) {
      const isotherm = measuredIsotherm({ ...branch, work: branch.source.work })
      const { from, to } = isotherm.rhPercent(branch.temperatureC)!
      expect(isotherm.contentGPerKg(from, branch.temperatureC)).toBeCloseTo(branch.points[0]![1], 6)
      expect(isotherm.contentGPerKg(to, branch.temperatureC)).toBeCloseTo(branch.points.at(-1)![1], 6)
      expect(to).toBeLessThan(100)
    }
  })
})
