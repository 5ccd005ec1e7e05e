import { describe, expect, test } from 'vitest'
import { compiled } from './small-content.ts'

const flaws = (changes: Parameters<typeof compiled>[0]) =>
  compiled(changes).flaws.map(({ code, file, line }) => [code, `${file}:${line}`])

describe('tasks of the store', () => {
  const task = (caution: string) => ({
    'tasks/store.yaml': `- id: renew\n  label: Renew it\n  cautions:\n    - ${caution}\n`,
  })
  const sources = 'sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]'

  test('come with their cautions, figures printed in', () => {
    const { knowledge, flaws } = compiled(
      task(`{ code: quiet, level: warn, text: 'Below {figure:iron-ceiling}.', ${sources} }`),
    )
    expect(flaws).toEqual([])
    expect(knowledge.tasks).toEqual({
      renew: {
        id: 'renew',
        label: 'Renew it',
        cautions: [
          {
            code: 'quiet',
            level: 'warn',
            text: 'Below 20 %.',
            contested: null,
            sources: [{ work: 'read-1999', place: 'p. 1', says: 'supports', known: 'read' }],
          },
        ],
      },
    })
  })

  test('a code, a contested matter, a work or a figure that is not there is a flaw, and so are digits', () => {
    const at = (line: number) => `content/tasks/store.yaml:${line}`
    expect(flaws(task(`{ code: quietly, level: warn, text: So., ${sources} }`))).toEqual([
      ['unknown-id', at(4)],
    ])
    expect(flaws(task(`{ code: quiet, level: warn, text: So., contested: nothing, ${sources} }`))).toEqual([
      ['unknown-id', at(4)],
    ])
    expect(flaws(task(`{ code: quiet, level: warn, text: At 120., ${sources} }`))).toEqual([
      ['digits', at(4)],
    ])
    expect(flaws(task(`{ code: quiet, level: warn, text: '{figure:none}', ${sources} }`))).toEqual([
      ['unknown-id', at(4)],
    ])
    expect(flaws(task(`{ code: quiet, level: limit, text: So., ${sources} }`))).toEqual([
      ['wrong-form', at(4)],
    ])
    expect(flaws({ 'tasks/store.yaml': '- { id: renew, label: Renew it, cautions: [] }' })).toEqual([
      ['wrong-form', at(1)],
    ])
  })

  test('one of the same name twice is a flaw', () => {
    const { 'tasks/store.yaml': one } = task(`{ code: quiet, level: warn, text: So., ${sources} }`)
    expect(flaws({ 'tasks/store.yaml': one! + one! })).toEqual([['duplicate', 'content/tasks/store.yaml:5']])
  })
})

describe('measured isotherms', () => {
  const isotherm = (points: string, known = 'read') => ({
    'isotherms/gel.yaml': `- id: gel
  label: A gel
  branch: adsorption
  temperature-c: 25
  points: ${points}
  source: { work: read-1999, place: p. 1 }
  known: ${known}
  note: Invented.
`,
  })
  const rising = '[[100, 10], [200, 30], [300, 40]]'

  test('come as they were measured', () => {
    const { knowledge, flaws } = compiled(isotherm(rising))
    expect(flaws).toEqual([])
    expect(knowledge.isotherms['gel']).toEqual({
      id: 'gel',
      label: 'A gel',
      branch: 'adsorption',
      temperatureC: 25,
      points: [
        [100, 10],
        [200, 30],
        [300, 40],
      ],
      source: { work: 'read-1999', place: 'p. 1' },
      known: 'read',
      note: 'Invented.',
    })
  })

  test('points that do not rise, too few of them, or a source better known than its work are flaws', () => {
    const at = (line: number) => `content/isotherms/gel.yaml:${line}`
    expect(flaws(isotherm('[[100, 10], [200, 30], [150, 40]]'))).toEqual([['wrong-form', at(5)]])
    expect(flaws(isotherm('[[100, 10], [200, 30], [300, 30]]'))).toEqual([['wrong-form', at(5)]])
    expect(flaws(isotherm('[[0, 10], [200, 30], [300, 40]]'))).toEqual([['wrong-form', at(5)]])
    expect(flaws(isotherm('[[100, 10], [200, 30]]'))).toEqual([['wrong-form', at(5)]])
    const quoted = isotherm(rising)['isotherms/gel.yaml']!.replace('read-1999', 'quoted-1998')
    expect(flaws({ 'isotherms/gel.yaml': quoted })).toEqual([['known-better', at(6)]])
  })
})
