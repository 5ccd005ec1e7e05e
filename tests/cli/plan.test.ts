import { afterAll, describe, expect, it } from 'vitest'
import type { Plan } from '../../lib/engine/plan.ts'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const heading = 'site_code,find_number,object,burial,state_now,component,material,seen,notes'
const good = place.file(
  'good.csv',
  `${heading}\nTW,TW-2,nail,free-draining,dry,body,iron,orange-brown-crust,\nTW,TW-1,pin,clay,dry,body,copper-alloy,compact-green,\n`,
)
const mixed = place.file(
  'mixed.csv',
  `${heading}\nTW,TW-1,nail,free-draining,dry,body,iron,,\nTW,,,,,body,iron,,perhaps a grenade\nTW,TW-3,buckle,clay,dry,body,bronz,,\n`,
)

const plansOf = (out: string) =>
  out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Plan)

describe('plan', () => {
  it('prints one JSON object a record, in the order of the file, and ends with 0', async () => {
    const { code, out, err } = await place.call('plan', good, '--format', 'json')
    expect([code, err]).toEqual([0, ''])
    expect(plansOf(out).map(({ find, asOf }) => [find, asOf])).toEqual([
      ['TW-2', '2026-11-25'],
      ['TW-1', '2026-11-25'],
    ])
  })

  it('plans for the day it is told', async () => {
    const { out } = await place.call('plan', good, '--format', 'json', '--on', '2027-01-02')
    expect(plansOf(out)[0]!.asOf).toBe('2027-01-02')
    expect((await place.call('plan', good, '--on', '2027-01-02')).out).toContain('Planned for 2027-01-02')
  })

  it('plans what it can, names the rest with row, column and what to do, and ends with 1', async () => {
    const { code, out, err } = await place.call('plan', mixed, '--format', 'json')
    expect(code).toBe(1)
    expect(plansOf(out).map(({ find }) => find)).toEqual(['TW-1', 'TW-3'])
    expect(err).toContain('Row 3, column “find_number”')
    expect(err).toMatch(/Row 4, column “material”, find TW-3: “bronz”.*bronze/)
  })

  it.each(['text', 'json', 'csv'])(
    "says a stop before anything else, an unreadable row's too (%s)",
    async (format) => {
      const { out, err } = await place.call('plan', mixed, '--format', format)
      expect(format === 'text' ? out : err).toMatch(/^STOP {2}row 3: /)
    },
  )

  it('opens each plan of the text with its steps, before keeping, handling and packing', async () => {
    const { out } = await place.call('plan', good)
    const [nail] = out.slice(out.indexOf('TW-2, nail')).split('\n\n')
    const lines = nail!.split('\n')
    expect(lines.findIndex((line) => /^ {3}1\. /.test(line))).toBeLessThan(4)
    expect(lines.findIndex((line) => line.startsWith('Keep '))).toBeGreaterThan(
      lines.findIndex((line) => /^ {3}1\. /.test(line)),
    )
    expect(
      out
        .trim()
        .split('\n')
        .every((line) => line.length <= 96),
    ).toBe(true)
  })

  it('names at the end every work that a line of the text cites', async () => {
    const { out } = await place.call('plan', good)
    const [text, works] = out.split('\nWorks\n')
    const cited = new Set(
      [...text!.matchAll(/\[(\d[^\]]*)\]/g)].flatMap(([, list]) =>
        list!.split(',').map((mark) => Number.parseInt(mark, 10)),
      ),
    )
    expect(cited.size).toBeGreaterThan(3)
    expect([...works!.matchAll(/^ {2}\[(\d+)\]/gm)].map(([, number]) => Number(number))).toEqual(
      [...cited].toSorted((a, b) => a - b),
    )
  })

  it('writes one row a find as CSV', async () => {
    const { out } = await place.call('plan', good, '--format', 'csv')
    const rows = out.trim().split('\r\n')
    expect(rows).toHaveLength(3)
    expect(rows[0]).toMatch(/^find,as_of,urgency,stops,steps,keep,rh_min_percent,rh_max_percent/)
    expect(rows[1]).toMatch(/^TW-2,2026-11-25,/)
  })

  it.each([
    ['a file that is not there', ['plan', 'nowhere.csv'], 'There is no such file'],
    ['no file', ['plan'], 'Name the file'],
    ['two files', ['plan', good, good], 'one too many'],
    ['a folder', ['plan', place.folder], 'folder'],
    ['an unknown format', ['plan', good, '--format', 'yaml'], 'text, json, csv'],
    ['a day that does not exist', ['plan', good, '--on', '2026-02-30'], '2026-02-30'],
    ['an unknown option', ['plan', good, '--loud'], '--loud'],
    ['an unknown command', ['plane', good], 'no command "plane"'],
  ])('ends with 2 and says how it is called: %s', async (_, args, words) => {
    const { code, out, err } = await place.call(...args)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(words)
    expect(err).toContain('Use: ')
  })

  it.each([
    ['an empty file', ''],
    ['headings only', `${heading}\n`],
    ['no find number column', 'object,material\nnail,iron\n'],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 1, 2, 3])],
    ['a web page', '<html><body><table></table></body></html>'],
  ])('ends with 2 where nothing can be read: %s', async (name, content) => {
    const { code, out, err } = await place.call(
      'plan',
      place.file(`${name}.csv`, content),
      '--format',
      'json',
    )
    expect([code, out]).toEqual([2, ''])
    expect(err).not.toBe('')
  })

  it('gives its help', async () => {
    const { code, out } = await place.call('plan', '--help')
    expect(code).toBe(0)
    expect(out).toContain('plan FILE [--format text|json|csv] [--on DATE]')
    expect((await place.call('--help')).out).toContain('explain FILE --find NUMBER')
  })
})

describe('explain', () => {
  it('gives for every line the rule, the facts it used and its works', async () => {
    const { code, out } = await place.call('explain', good, '--find', 'TW-2')
    expect(code).toBe(0)
    const lines = out.split('\n').filter((line) => line.startsWith('  · ')).length
    for (const name of ['Rule', 'Source']) {
      expect(
        out.split('\n').filter((line) => line.startsWith(`      ${name} `)).length,
      ).toBeGreaterThanOrEqual(lines - 10)
    }
    expect(out).toMatch(/From {6}/)
    expect(out).toMatch(/Figure {4}/)
  })

  it('carries the same as JSON', async () => {
    const { out } = await place.call('explain', good, '--find', 'TW-1', '--format', 'json')
    expect(plansOf(out).map(({ find }) => find)).toEqual(['TW-1'])
  })

  it('ends with 2 for a find that is not in the file', async () => {
    expect(await place.call('explain', good, '--find', 'TW-99')).toMatchObject({ code: 2, out: '' })
    expect((await place.call('explain', good)).err).toContain('--find')
  })
})

describe('import and export', () => {
  it('keeps a file and gives it back', async () => {
    const dry = await place.call('import', good, '--project', 'Wharf', '--dry-run')
    expect(dry.out).toContain('2 records would be kept in Wharf (2 new finds), 0 there already')
    expect(await place.call('import', good, '--project', 'Wharf')).toMatchObject({ code: 0 })
    expect((await place.call('import', good, '--project', 'Wharf')).out).toContain(
      '0 records kept in Wharf (0 new finds), 2 there already',
    )
    const { code, out } = await place.call('export', '--format', 'json')
    expect(code).toBe(0)
    const records = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { find_number: string })
    expect(records.map(({ find_number }) => find_number)).toEqual(['TW-1', 'TW-2'])
  })

  it('asks which project where there are several, and for a file where the form is no text', async () => {
    expect(
      await place.call('import', mixed, '--project', 'Yard', '--by', 'Ana', '--role', 'conservator'),
    ).toMatchObject({ code: 1 })
    expect((await place.call('export')).err).toContain('--project "Wharf", "Yard"')
    expect(await place.call('export', '--project', 'Wharf', '--format', 'xlsx')).toMatchObject({ code: 2 })
    expect(await place.call('export', '--project', 'Nowhere')).toMatchObject({ code: 2 })
  })
})

describe('a long file', () => {
  it('is shared out and still printed in its order', async () => {
    const numbers = Array.from({ length: 2_100 }, (_, at) => `TW-${at}`)
    const long = place.file(
      'long.csv',
      `find_number,material\n${numbers.map((number) => `${number},iron`).join('\n')}\n`,
    )
    const { code, out } = await place.call('plan', long, '--format', 'json')
    expect(code).toBe(0)
    expect(plansOf(out).map(({ find }) => find)).toEqual(numbers)
    const { out: alone } = await place.call(
      'plan',
      place.file('one.csv', 'find_number,material\nTW-7,iron\n'),
      '--format',
      'json',
    )
    expect(plansOf(out)[7]).toEqual(plansOf(alone)[0])
  })
})
