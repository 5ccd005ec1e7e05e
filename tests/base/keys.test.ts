import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { canonical } from '../../lib/base/canonical.ts'
import { folded } from '../../lib/base/fold.ts'
import { sortKey } from '../../lib/base/sort-key.ts'
import { uuidV7 } from '../../lib/base/uuid.ts'

describe('a new id', () => {
  it('is a UUIDv7 that tells its moment', () => {
    const id = uuidV7(1_795_000_000_000)
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
    expect(Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16)).toBe(1_795_000_000_000)
  })

  it('agrees with the example of RFC 9562, appendix A.6', () => {
    const chance = new Uint8Array([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])
    expect(uuidV7(0x017f22e279b0, chance)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')
  })

  it('sorts by the moment and is never given twice', () => {
    const ids = Array.from({ length: 5000 }, (_, at) => uuidV7(1_795_000_000_000 + Math.floor(at / 1000)))
    expect(new Set(ids).size).toBe(5000)
    expect(uuidV7(1_795_000_000_000) < uuidV7(1_795_000_000_001)).toBe(true)
  })
})

describe('the order of find numbers', () => {
  it('is that of a person', () => {
    const numbers = ['TW-100', 'TW-9', 'TW 10', 'TW-0009a', 'AB-7']
    expect(numbers.toSorted((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1))).toEqual(['AB-7', 'TW-9', 'TW-0009a', 'TW 10', 'TW-100'])
  })

  it('holds letters and digits only, in small, which all engines sort alike', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => /^[\p{L}\p{N}\p{M}]*$/u.test(sortKey(text))))
  })
})

describe('a folded text', () => {
  it('has neither case nor accents nor odd blanks, and is folded once for all', () => {
    expect(folded('  Clé \n du QUAI ')).toBe('cle du quai')
    fc.assert(fc.property(fc.string(), (text) => folded(folded(text)) === folded(text)))
  })
})

describe('canonical JSON', () => {
  it('does not know in which order keys came', () => {
    expect(canonical({ b: [1, { d: 1, c: 2 }], a: null })).toBe(canonical({ a: null, b: [1, { c: 2, d: 1 }] }))
    fc.assert(fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const back = Object.fromEntries(Object.entries(value).toReversed())
      return canonical(value) === canonical(back)
    }))
  })
})
