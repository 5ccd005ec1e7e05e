import { describe, expect, it } from 'vitest'
import { packBetter } from '../../lib/boxes/bins-better.ts'
import { packAtOnce } from '../../lib/boxes/bins-first.ts'
import type { PackBox, PackFind } from '../../lib/boxes/pack-find.ts'
import type { Begin } from '../../lib/boxes/pack-residents.ts'
import { proposalOf } from '../../lib/boxes/pack-told.ts'
import { packStoreBoxes } from '../../lib/boxes/pack.ts'
import { aBox, aFind, copper, figures, gelFor, lead, tub, wet } from './pack-samples.ts'

function proposed(finds: readonly PackFind[], boxes: readonly PackBox[], begin: Begin = 'as-it-stands') {
  const { task, packing } = packStoreBoxes({ finds, boxes, begin, figures, gelFor }, (bins) =>
    packBetter(bins, packAtOnce(bins), { seed: 1, steps: 1500 }),
  )
  const proposal = proposalOf(task, packing)
  const together = proposal.boxes.map(({ findIds }) => findIds.map((id) => id.slice(3)).join(' '))
  const whyOf = (name: string) => proposal.nowhere.find(({ findId }) => findId === `id-${name}`)?.why
  return { proposal, together: together.toSorted(), whyOf }
}

const plenty = aBox(null, { count: 20 })

describe('who shares a box', () => {
  it('iron with iron; copper and lead each with their own metal', () => {
    const finds = [
      aFind('a'),
      aFind('b'),
      aFind('c', copper),
      aFind('d', copper),
      aFind('e', lead),
      aFind('f', lead),
    ]
    expect(proposed(finds, [plenty]).together).toEqual(['a b', 'c d', 'e f'])
  })

  it('no organic part beside iron, nor beside what asks for clean air, but composites together', () => {
    const knife = { families: ['iron', 'organic'], rhPercent: { min: 35, max: 45 }, apartFromOrganics: false }
    expect(
      proposed(
        [aFind('a', { rhPercent: { min: 0, max: 45 } }), aFind('k', knife), aFind('m', knife)],
        [plenty],
      ).together,
    ).toEqual(['a', 'k m'])
    const bead = { families: ['glass'], rhPercent: { min: 35, max: 45 }, apartFromOrganics: false }
    expect(proposed([aFind('a', bead), aFind('k', knife)], [plenty]).together).toEqual(['a', 'k'])
    expect(
      proposed(
        [aFind('a', { ...bead, cleanAir: false }), aFind('k', { ...knife, families: ['organic'] })],
        [plenty],
      ).together,
    ).toEqual(['a k'])
  })

  it('bands that meet, and by enough for a box to hold', () => {
    const at = (min: number, max: number) => ({ rhPercent: { min, max } })
    expect(proposed([aFind('a', at(0, 12)), aFind('b', at(0, 45))], [plenty]).together).toEqual(['a b'])
    expect(proposed([aFind('a', at(0, 39)), aFind('b', at(35, 45))], [plenty]).together).toEqual(['a', 'b'])
    expect(proposed([aFind('a', at(0, 40)), aFind('b', at(35, 45))], [plenty]).together).toEqual(['a b'])
    // Each two of the three meet, and so do all three.
    const { proposal } = proposed(
      [aFind('a', at(20, 40)), aFind('b', at(35, 60)), aFind('c', at(30, 45))],
      [plenty],
    )
    expect(proposal.boxes.map(({ band, decidedBy }) => [band, decidedBy])).toEqual([
      [
        { min: 35, max: 40 },
        { high: 'id-a', low: 'id-b' },
      ],
    ])
  })

  it('wet finds go into tubs, one metal a tub, and nothing dry goes there', () => {
    const finds = [aFind('a', wet), aFind('b', wet), aFind('c', { ...copper, ...wet }), aFind('d')]
    const { proposal, together } = proposed(finds, [aBox('T1', tub), aBox('T2', tub), aBox('B1')])
    expect(together).toEqual(['a b', 'c', 'd'])
    expect(proposal.boxes.find(({ findIds }) => findIds.includes('id-d'))!.box.name).toBe('B1')
    expect(
      proposal.boxes.filter(({ box }) => box.kind === 'tub').map(({ gelKg, band }) => [gelKg, band]),
    ).toEqual([
      [0, null],
      [0, null],
    ])
  })

  it('what may shed poison lies alone', () => {
    expect(
      proposed([aFind('a', { alone: true }), aFind('b', { alone: true }), aFind('c')], [plenty]).together,
    ).toEqual(['a', 'b', 'c'])
  })
})

describe('what to see to on the way', () => {
  const heedOf = (find: PackFind, box: PackBox, ...more: readonly PackBox[]) =>
    proposed([find], [box, ...more]).proposal.moves[0]!.heed

  it('what is damp, or comes out of a tub, dries in the open before it is closed in', () => {
    expect(heedOf(aFind('a', { dryFirst: true }), aBox('B1'))).toEqual(['dry-first'])
    expect(heedOf(aFind('a', { box: 'T1' }), aBox('B1'), aBox('T1', tub))).toEqual(['dry-first'])
    expect(heedOf(aFind('a', wet), aBox('T1', tub))).toEqual([])
    expect(heedOf(aFind('a'), aBox('B1'))).toEqual([])
  })

  it('what a conservator has a say in, what was not measured, and a room that is right only at times', () => {
    expect(heedOf(aFind('a', { askBeforeMoving: true }), aBox('B1'))).toEqual(['ask-first'])
    expect(heedOf(aFind('a', { measured: { ...aFind('a').measured, massG: null } }), aBox('B1'))).toEqual([
      'size-supposed',
    ])
    expect(heedOf(aFind('a', { temperatureC: { min: null, max: 18 } }), aBox('B1'))).toEqual([
      'room-temperature',
    ])
    expect(heedOf(aFind('a'), aBox('B1', { roomTemperatureC: null }))).toEqual(['room-temperature'])
  })
})

describe('sizes and weights', () => {
  const big = (name: string, lengthMm: number, also: Partial<PackFind> = {}) =>
    aFind(name, { measured: { quantity: 1, massG: 100, lengthMm, widthMm: 30, thicknessMm: 20 }, ...also })

  it('a find longer than any box says by how much, bag counted', () => {
    expect(
      proposed([big('a', 290)], [aBox('B1'), aBox('B2', { insideMm: [250, 200, 170] })]).whyOf('a'),
    ).toEqual([{ code: 'too-long', byMm: 10, sideMm: 310 }])
    expect(proposed([big('a', 280)], [aBox('B1')]).together).toEqual(['a'])
  })

  it('and is put where it is long enough', () => {
    const long = aBox('B9', { insideMm: [600, 150, 110] })
    const { proposal } = proposed([big('a', 400), big('b', 100)], [aBox('B1'), long])
    expect(proposal.boxes.map(({ box, findIds }) => [box.name, findIds])).toEqual([['B9', ['id-a', 'id-b']]])
  })

  it('where nobody wrote the inner sides it is tried by hand', () => {
    const { proposal } = proposed([big('a', 400)], [aBox('B1', { insideMm: null })])
    expect(proposal.moves[0]!.heed).toEqual(['try-size'])
  })

  it('no box is filled beyond its room or its load', () => {
    const heavy = (name: string) =>
      aFind(name, { measured: { quantity: 1, massG: 4000, lengthMm: 60, widthMm: 60, thicknessMm: 60 } })
    const { proposal } = proposed(['a', 'b', 'c', 'd', 'e'].map(heavy), [plenty])
    expect(proposal.boxes.map(({ massKg }) => massKg).toSorted()).toEqual([4, 8, 8])
    expect([proposal.used, proposal.atLeast]).toEqual([3, 3])
    expect(proposed([heavy('a')], [aBox('B1', { maxKg: 3 })]).whyOf('a')).toEqual([
      { code: 'too-heavy', massKg: 4, mostKg: 3 },
    ])
    expect(proposed([heavy('a')], [aBox('B1', { volumeL: 0.5 })]).whyOf('a')).toEqual([
      { code: 'too-big', volumeL: 0.512, mostL: 0.3 },
    ])
  })
})

describe('why a find has no box', () => {
  it.each([
    [
      'its band is narrower than any box holds',
      { rhPercent: { min: 42, max: 46 } },
      [{ code: 'band-narrower', widthPercent: 4, narrowestPercent: 5 }],
    ],
    [
      'it wants drier air than gel gives',
      { rhPercent: { min: 0, max: 8 } },
      [{ code: 'drier-than-gel', maxPercent: 8, driestPercent: 5 }],
    ],
    ['nobody may touch it', { stopped: true }, [{ code: 'stopped' }]],
    [
      'no band suits it',
      { rhPercent: null, holdingRhPercent: { min: 30, max: 40 } },
      [{ code: 'no-one-band', holdingRhPercent: { min: 30, max: 40 } }],
    ],
    ['it is kept wet and there is no tub', wet, [{ code: 'no-tub' }]],
    [
      'no room is as cold',
      { temperatureC: { min: null, max: 10 } },
      [{ code: 'no-room-for-temperature', min: null, max: 10 }],
    ],
  ] as const)('%s', (_, also, why) => {
    expect(proposed([aFind('a', also)], [plenty]).whyOf('a')).toEqual(why)
  })

  it('every box leaks too fast to be kept dry, and none stands in dry air', () => {
    const leaky = aBox('B1', { airChangesPerDay: 24 })
    expect(proposed([aFind('a')], [leaky]).whyOf('a')).toEqual([{ code: 'no-tight-box' }])
    expect(proposed([aFind('a', { rhPercent: { min: 0, max: 60 } })], [leaky]).together).toEqual(['a'])
  })

  it('all that suit are full, none is empty for what lies alone, or there is none', () => {
    const small = aBox('B1', { volumeL: 0.3 })
    expect(
      proposed([aFind('a', { rank: 0 }), aFind('b'), aFind('c'), aFind('d')], [small]).proposal.nowhere,
    ).toEqual(
      ['c', 'd'].map((name) => ({ findId: `id-${name}`, still: null, why: [{ code: 'no-box-left' }] })),
    )
    expect(proposed([aFind('a', { box: 'B1' }), aFind('b', { alone: true })], [small]).whyOf('b')).toEqual([
      { code: 'no-box-alone' },
    ])
    expect(proposed([aFind('a')], []).whyOf('a')).toEqual([{ code: 'no-box' }])
    expect(proposed([aFind('a')], [aBox('B1', { volumeL: null })]).whyOf('a')).toEqual([{ code: 'no-box' }])
  })
})

describe('what stays where it is', () => {
  it('whoever is well there; only the others move', () => {
    const boxes = [
      aBox('B1', { targetRhPercent: { min: 0, max: 12 } }),
      aBox('B2', { targetRhPercent: { min: 0, max: 35 } }),
    ]
    const finds = [
      aFind('a', { box: 'B1' }),
      aFind('b', { box: 'B2' }),
      aFind('c', { ...copper, box: 'B2' }),
      aFind('d', { ...copper, box: 'B1' }),
    ]
    const { proposal } = proposed(finds, boxes)
    expect(
      proposal.moves.map(({ findId, from, to }) => [findId, from, proposal.boxes[to]!.box.name]),
    ).toEqual([
      ['id-d', 'B1', 'B2'],
      ['id-b', 'B2', 'B1'],
    ])
  })

  it('an opened box keeps the humidity it is meant to hold', () => {
    const boxes = [aBox('B1', { targetRhPercent: { min: 0, max: 12 } })]
    const finds = [
      aFind('a', { box: 'B1', rhPercent: { min: 0, max: 45 } }),
      aFind('b', { rhPercent: { min: 35, max: 45 } }),
    ]
    expect(proposed(finds, boxes).whyOf('b')).toEqual([{ code: 'no-box-left' }])
  })

  it('nothing goes into or out of a box in which a stop lies', () => {
    const finds = [aFind('a', { box: 'B1', stopped: true }), aFind('b', { ...copper, box: 'B1' }), aFind('c')]
    for (const begin of ['as-it-stands', 'afresh'] as const) {
      const { proposal, whyOf } = proposed(finds, [aBox('B1')], begin)
      expect(proposal.stays.map(({ findId, why }) => [findId, why])).toEqual([
        ['id-a', 'stopped'],
        ['id-b', 'beside-a-stop'],
      ])
      expect(whyOf('c')).toEqual([{ code: 'no-box-left' }])
      expect([proposal.used, proposal.moves]).toEqual([1, []])
    }
  })

  it('nor of one whose own note calls for a stop, empty or not', () => {
    const { proposal, whyOf } = proposed(
      [aFind('a', { ...copper, box: 'B1' }), aFind('b')],
      [aBox('B1', { stopped: true }), aBox('B2', { stopped: true })],
    )
    expect(proposal.stays).toEqual([{ findId: 'id-a', box: 'B1', why: 'beside-a-stop' }])
    expect(whyOf('b')).toEqual([{ code: 'no-box-left' }])
  })

  it('what no band suits waits for a conservator, and nothing new is put beside it', () => {
    const undecided = { rhPercent: null, keep: 'as-found' } as const
    const finds = [aFind('a', { ...undecided, box: 'B1' }), aFind('b', { box: 'B1' }), aFind('c')]
    const standing = proposed(finds, [aBox('B1'), aBox('B2')])
    expect(standing.proposal.stays.map(({ findId, why }) => [findId, why])).toEqual([
      ['id-a', 'no-one-band'],
      ['id-b', 'well-there'],
    ])
    expect(standing.proposal.moves.map(({ findId }) => findId)).toEqual(['id-c'])
    const afresh = proposed(finds, [aBox('B1'), aBox('B2')], 'afresh')
    expect(afresh.proposal.moves.map(({ findId }) => findId)).toEqual(['id-b', 'id-c'])
  })
})

describe('what finds no box and lies in one', () => {
  const far = { measured: { quantity: 1, massG: 50, lengthMm: 400, widthMm: 10, thicknessMm: 10 } }

  it('goes on lying there, and nothing is put beside it', () => {
    const boxes = [aBox('B1'), aBox('B2')]
    const finds = [
      aFind('a', { ...copper, ...far, box: 'B1' }),
      aFind('b', { box: 'B2' }),
      aFind('c', { ...copper, box: 'B2' }),
    ]
    const { proposal } = proposed(finds, boxes, 'afresh')
    expect(proposal.nowhere).toEqual([
      { findId: 'id-a', still: 'B1', why: [{ code: 'too-long', byMm: 120, sideMm: 420 }] },
      { findId: expect.stringMatching(/id-[bc]/), still: 'B2', why: [{ code: 'no-box-left' }] },
    ])
    expect(proposal.stays.map(({ why }) => why)).toEqual(['well-there'])
    expect(proposal.moves).toEqual([])
    expect(proposal.used).toBe(2)
  })

  it('but whoever is well beside it stays', () => {
    const finds = [
      aFind('a', { ...far, box: 'B1', keep: 'wet', rhPercent: null }),
      aFind('b', { box: 'B1' }),
      aFind('c'),
    ]
    const { proposal } = proposed(finds, [aBox('B1'), aBox('B2')])
    expect(proposal.stays.map(({ findId, why }) => [findId, why])).toEqual([['id-b', 'well-there']])
    expect(proposal.moves.map(({ findId, to }) => [findId, proposal.boxes[to]!.box.name])).toEqual([
      ['id-c', 'B2'],
    ])
  })
})

describe('packed anew', () => {
  it('takes fewer boxes, the smallest that do, and leaves as many finds as it can where they are', () => {
    const boxes = [aBox('B1'), aBox('B2'), aBox('B3'), aBox('B4', { model: 'small', volumeL: 2 })]
    const finds = [
      aFind('a', { box: 'B1' }),
      aFind('b', { box: 'B2' }),
      aFind('c', { box: 'B2' }),
      aFind('d', { ...copper, box: 'B3' }),
    ]
    const standing = proposed(finds, boxes)
    expect([standing.proposal.used, standing.proposal.moves]).toEqual([3, []])
    const large = finds.map((find) => ({ ...find, measured: { ...find.measured, massG: 2500 } }))
    const afresh = proposed(large.slice(0, 3), boxes.slice(0, 3), 'afresh')
    expect(afresh.proposal.boxes.map(({ box, findIds }) => [box.name, findIds])).toEqual([
      ['B2', ['id-a', 'id-b', 'id-c']],
    ])
    expect(afresh.proposal.moves.map(({ findId }) => findId)).toEqual(['id-a'])
    expect(proposed(finds, boxes, 'afresh').proposal.boxes.some(({ box }) => box.name === 'B4')).toBe(true)
  })

  it('lists moves as one walks the shelves, what has no box yet last', () => {
    const boxes = [
      aBox('B2', { shelf: 'A1' }),
      aBox('B1', { shelf: 'A2' }),
      aBox('B10', { shelf: 'A10' }),
      aBox('N', { shelf: 'B1', volumeL: 30, insideMm: [400, 300, 250] }),
    ]
    const finds = ['B10', 'B1', null, 'B2'].map((box, at) =>
      aFind(`f${at}`, {
        box,
        measured: { quantity: 1, massG: 50, lengthMm: 350, widthMm: 10, thicknessMm: 10 },
      }),
    )
    const { proposal } = proposed(finds, boxes, 'afresh')
    expect(proposal.moves.map(({ from }) => from)).toEqual(['B2', 'B1', 'B10', null])
  })
})
