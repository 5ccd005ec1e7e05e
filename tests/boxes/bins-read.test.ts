import { describe, expect, it } from 'vitest'
import { readBins } from '../../lib/boxes/bins-read.ts'

describe('a packing problem as it is given', () => {
  it('is read in whole numbers, so that three times 0.1 fills 0.3', () => {
    expect(readBins('{"capacity": 0.3, "items": [0.1, 0.1, 0.1, 0.25]}')).toEqual({
      ok: true,
      value: { capacity: 30, sizes: [10, 10, 10, 25] },
    })
    expect(readBins('{"capacity": 150, "items": [1e-6, 1e2]}')).toEqual({
      ok: true,
      value: { capacity: 150_000_000, sizes: [1, 100_000_000] },
    })
  })

  it('may hold nothing, and keys of no meaning here', () => {
    expect(readBins('{"capacity": 5, "items": [], "note": "none"}')).toEqual({
      ok: true,
      value: { capacity: 5, sizes: [] },
    })
  })

  it('has every fault told at once, each with its place', () => {
    const read = readBins('{"capacity": 10, "items": [3, "4", 0, -1, null, 11, 0.1234567, 1e999]}')
    expect(read).toEqual({
      ok: false,
      problems: [
        { code: 'size', item: 1, found: '4' },
        { code: 'size', item: 2, found: 0 },
        { code: 'size', item: 3, found: -1 },
        { code: 'size', item: 4, found: null },
        { code: 'too-large', item: 5, size: 11, capacity: 10 },
        { code: 'too-fine', item: 6, found: 0.1234567 },
        { code: 'size', item: 7, found: Infinity },
      ],
    })
  })

  it.each([
    ['[1, 2]', ['no-object']],
    ['null', ['no-object']],
    ['{"capacity": 3', ['not-json']],
    ['{}', ['capacity', 'no-items']],
    ['{"capacity": "3", "items": {}}', ['capacity', 'no-items']],
    ['{"capacity": 1e999, "items": []}', ['capacity']],
  ])('%s cannot be packed', (text, codes) => {
    const read = readBins(text)
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(codes)
  })
})
