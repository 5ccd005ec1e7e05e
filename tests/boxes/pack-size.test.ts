import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { baggedOf } from '../../lib/boxes/pack-size.ts'
import type { Measured } from '../../lib/boxes/pack-find.ts'
import { figures } from './pack-samples.ts'

const nothing: Measured = { quantity: 1, massG: null, lengthMm: null, widthMm: null, thicknessMm: null }

describe('a find in its bag', () => {
  it('is as long, wide and thick as measured, and padded all round', () => {
    expect(baggedOf({ quantity: 1, massG: 20, lengthMm: 50, widthMm: 12, thicknessMm: 80 }, figures)).toEqual(
      {
        sidesMm: [100, 70, 32],
        volumeMl: 224,
        massG: 20,
        supposed: false,
      },
    )
  })

  it('of which only the mass is known is a lump of that mass', () => {
    expect(baggedOf({ ...nothing, massG: 27 }, figures)).toMatchObject({
      sidesMm: [50, 50, 50],
      massG: 27,
      supposed: true,
    })
  })

  it('of which a side is missing is no thicker than what was measured, and as thick as its mass has it', () => {
    expect(baggedOf({ ...nothing, massG: 27, lengthMm: 90, widthMm: 30 }, figures).sidesMm).toEqual([
      110, 50, 30,
    ])
    expect(baggedOf({ ...nothing, massG: 9000, lengthMm: 90, widthMm: 30 }, figures).sidesMm).toEqual([
      110, 50, 50,
    ])
    expect(baggedOf({ ...nothing, lengthMm: 90 }, figures).sidesMm).toEqual([110, 60, 60])
    expect(baggedOf({ ...nothing, lengthMm: 20 }, figures).sidesMm).toEqual([40, 40, 40])
  })

  it('of which nothing is known is supposed, its mass too', () => {
    expect(baggedOf(nothing, figures)).toEqual({
      sidesMm: [60, 60, 60],
      volumeMl: 216,
      massG: 64,
      supposed: true,
    })
  })

  it('is one bag for a lot, as large as all of it and as long as its longest piece', () => {
    const nails = { quantity: 40, massG: 800, lengthMm: 100, widthMm: 10, thicknessMm: 8 }
    const [long, wide, thick] = baggedOf(nails, figures).sidesMm
    expect(long).toBe(120)
    expect((100 * (wide - 20) * (thick - 20)) / 1000).toBeGreaterThanOrEqual(320)
    expect(baggedOf({ ...nothing, quantity: 40, massG: 800 }, figures).volumeMl).toBeGreaterThan(800)
  })

  it('takes more room the more there is of it', () => {
    const side = fc.option(fc.integer({ min: 1, max: 500 }), { nil: null })
    const measured = fc.record({
      quantity: fc.integer({ min: 1, max: 50 }),
      massG: fc.option(fc.integer({ min: 1, max: 5000 }), { nil: null }),
      lengthMm: side,
      widthMm: side,
      thicknessMm: side,
    })
    fc.assert(
      fc.property(measured, (find) => {
        const bagged = baggedOf(find, figures)
        const [long, wide, thick] = bagged.sidesMm
        expect(long).toBeGreaterThanOrEqual(
          Math.max(find.lengthMm ?? 0, find.widthMm ?? 0, find.thicknessMm ?? 0) + 20,
        )
        expect(long >= wide && wide >= thick - 1 && thick > 20).toBe(true)
        expect(
          baggedOf({ ...find, quantity: find.quantity + 50, massG: find.massG && find.massG * 60 }, figures)
            .volumeMl,
        ).toBeGreaterThanOrEqual(bagged.volumeMl)
      }),
    )
  })
})
