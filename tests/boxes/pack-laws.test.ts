import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { packBetter } from '../../lib/boxes/bins-better.ts'
import { packAtOnce } from '../../lib/boxes/bins-first.ts'
import type { PackBox, PackFind } from '../../lib/boxes/pack-find.ts'
import { baggedOf } from '../../lib/boxes/pack-size.ts'
import { proposalOf } from '../../lib/boxes/pack-told.ts'
import { packStoreBoxes } from '../../lib/boxes/pack.ts'
import { aBox, aFind, copper, figures, gelFor, lead, tub, wet } from './pack-samples.ts'

const composite: Partial<PackFind> = {
  families: ['iron', 'organic'],
  rhPercent: { min: 35, max: 45 },
  apartFromOrganics: false,
}
const undecided: Partial<PackFind> = {
  rhPercent: null,
  keep: 'as-found',
  holdingRhPercent: { min: 30, max: 40 },
}
const kinds = [
  {},
  copper,
  lead,
  wet,
  { ...copper, ...wet },
  composite,
  undecided,
  { alone: true },
  { stopped: true },
] as const
const boxNames = ['B1', 'B2', 'B3', 'B4', 'T1', 'T2', 'gone', null] as const

const anyFind = fc.record({
  kind: fc.integer({ min: 0, max: kinds.length + 5 }),
  max: fc.constantFrom(8, 12, 20, 45, 100),
  box: fc.constantFrom(...boxNames),
  long: fc.integer({ min: 5, max: 350 }),
  massG: fc.option(fc.integer({ min: 1, max: 6000 }), { nil: null }),
  rank: fc.integer({ min: 0, max: 5 }),
})

const anyStore = fc
  .record({
    finds: fc.array(anyFind, { maxLength: 30 }),
    more: fc.integer({ min: 0, max: 3 }),
    begin: fc.constantFrom('as-it-stands' as const, 'afresh' as const),
  })
  .map(({ finds, more, begin }) => ({
    begin,
    finds: finds.map(({ kind, max, box, long, massG, rank }, at) => {
      const also = kinds[kind] ?? {}
      const find = aFind(`f${at}`, {
        ...also,
        box,
        rank,
        measured: { quantity: 1, massG, lengthMm: long, widthMm: 10, thicknessMm: 8 },
      })
      return find.rhPercent?.min === 0 ? { ...find, rhPercent: { min: 0, max } } : find
    }),
    boxes: [
      aBox('B1', { targetRhPercent: { min: 0, max: 12 } }),
      aBox('B2', { shelf: 'A2', insideMm: [400, 200, 125] }),
      aBox('B3', { shelf: 'A3', volumeL: 5, airChangesPerDay: 20 }),
      aBox('B4', { shelf: 'A4', insideMm: null, maxKg: 3 }),
      aBox('T1', tub),
      aBox('T2', { ...tub, roomTemperatureC: { min: 8, max: 12 } }),
      ...(more > 0 ? [aBox(null, { count: more })] : []),
    ] satisfies readonly PackBox[],
  }))

function proposed({
  finds,
  boxes,
  begin,
}: {
  readonly finds: readonly PackFind[]
  readonly boxes: readonly PackBox[]
  readonly begin: 'as-it-stands' | 'afresh'
}) {
  const { task, packing } = packStoreBoxes({ finds, boxes, begin, figures, gelFor }, (bins) =>
    packBetter(bins, packAtOnce(bins), { seed: 1, steps: 1500 }),
  )
  return proposalOf(task, packing)
}

describe('a proposal, whatever the store', () => {
  it('has every find in one place: a box, no box with a reason, or where it was', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const { boxes, nowhere, stays } = proposed(store)
        const ids = [
          ...boxes.flatMap(({ findIds }) => findIds),
          ...nowhere.map(({ findId }) => findId),
          ...stays.map(({ findId }) => findId),
        ]
        expect(ids.toSorted()).toEqual(store.finds.map(({ id }) => id).toSorted())
        expect(nowhere.every(({ why }) => why.length > 0)).toBe(true)
      }),
    )
  })

  it('puts nothing where something in it forbids', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const byId = new Map(store.finds.map((find) => [find.id, find]))
        const { boxes, moves } = proposed(store)
        for (const { findId, to } of moves) {
          const find = byId.get(findId)!
          const { box, findIds } = boxes[to]!
          const beside = findIds.filter((id) => id !== findId).map((id) => byId.get(id)!)
          expect(box.kind === 'tub').toBe(find.keep === 'wet')
          if (find.alone) expect(beside).toEqual([])
          for (const other of beside) {
            expect(other.alone).toBe(false)
            if (find.keep === 'wet') expect(other.families).toEqual(find.families)
            const foreign = other.families.filter(
              (family) => family !== 'organic' && !find.families.includes(family),
            )
            if (find.apartFromMetals) expect(foreign).toEqual([])
            if (find.apartFromOrganics && find.keep !== 'wet') expect(other.families).not.toContain('organic')
          }
          const bands = [find, ...beside].flatMap(({ rhPercent }) => rhPercent ?? [])
          const [low, high] = [
            Math.max(figures.driestRhPercent, ...bands.map(({ min }) => min)),
            Math.min(100, ...bands.map(({ max }) => max)),
          ]
          if (find.keep !== 'wet') expect(high - low).toBeGreaterThanOrEqual(figures.narrowestRhPercent)
        }
      }),
    )
  })

  it('fills no box it puts something into beyond its room, its load and its sides', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const byId = new Map(store.finds.map((find) => [find.id, find]))
        const { boxes, moves } = proposed(store)
        for (const to of new Set(moves.map((move) => move.to))) {
          const { box, findIds } = boxes[to]!
          const bags = findIds.map((id) => baggedOf(byId.get(id)!.measured, figures))
          const part = box.kind === 'tub' ? 1 : figures.usablePart
          expect(bags.reduce((sum, { volumeMl }) => sum + volumeMl, 0)).toBeLessThanOrEqual(
            box.volumeL! * 1000 * part,
          )
          expect(bags.reduce((sum, { massG }) => sum + massG, 0)).toBeLessThanOrEqual(
            (box.maxKg ?? figures.mostKg) * 1000,
          )
        }
        for (const { findId, to } of moves) {
          const { sidesMm } = baggedOf(byId.get(findId)!.measured, figures)
          boxes[to]!.box.insideMm?.forEach((side, at) => expect(sidesMm[at]!).toBeLessThanOrEqual(side))
        }
      }),
    )
  })

  it('opens no box with a stop in it, moves nobody whom no band suits, and puts nothing beside', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const { boxes, moves } = proposed(store)
        const barred = store.finds.filter(
          ({ stopped, keep, rhPercent }) => stopped || (keep !== 'wet' && rhPercent === null),
        )
        const closed = new Set(barred.flatMap(({ box }) => box ?? []))
        const shut = new Set(barred.filter(({ stopped }) => stopped).flatMap(({ box }) => box ?? []))
        for (const { findId, from, to } of moves) {
          expect(barred.some(({ id }) => id === findId)).toBe(false)
          expect(closed.has(boxes[to]!.box.name ?? '')).toBe(false)
          expect(shut.has(from ?? '')).toBe(false)
        }
      }),
    )
  })

  it('puts nothing into a box in which something goes on lying for want of another', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const { boxes, moves, nowhere } = proposed(store)
        const lying = new Set(
          nowhere.flatMap(({ findId, still }) => {
            const { box } = store.finds.find(({ id }) => id === findId)!
            expect(still).toBe(store.boxes.some(({ name }) => name === box && box !== null) ? box : null)
            return still ?? []
          }),
        )
        for (const { to } of moves) expect(lying.has(boxes[to]!.box.name ?? '')).toBe(false)
      }),
    )
  })

  it('uses each box once, and no fewer than there must be', () => {
    fc.assert(
      fc.property(anyStore, (store) => {
        const { boxes, used, atLeast } = proposed(store)
        const names = boxes.map(({ box, number }) => box.name ?? `new ${box.model} ${number}`)
        expect(new Set(names).size).toBe(names.length)
        expect(used).toBeGreaterThanOrEqual(atLeast)
      }),
    )
  })
})
