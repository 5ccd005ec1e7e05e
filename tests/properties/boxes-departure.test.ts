import { describe, expect, it } from 'vitest'
import { departureOf } from '../../lib/boxes/departure.ts'
import type { Sighting } from '../../lib/boxes/box.ts'
import { drawnBox, logged, walkedBy, type DrawnBox } from '../simulated/drawn-box.ts'
import { mean } from '../simulated/forecast-holds.ts'
import { prior, stated } from '../simulated/stated.ts'

/** Looked at a day after the box began, by what had been seen until then. */
const lookedAt = ({ box, surroundings }: DrawnBox, sightings: readonly Sighting[], day: number) =>
  departureOf(
    box,
    surroundings,
    sightings.filter(({ on }) => on <= box.startedOn + day),
    prior,
  )

/** A look every third week for a year: one alarm in it is one too many. */
const looks = Array.from({ length: 17 }, (_, at) => 21 * (at + 1))
const alarmed = (one: DrawnBox, sightings: readonly Sighting[]) =>
  looks.some((day) => lookedAt(one, sightings, day) !== null)

describe('quiet boxes', () => {
  it('under a logger are named wrongly less than once in twenty years', () => {
    const quiet = Array.from({ length: 50 }, (_, at) =>
      drawnBox(30_000 + at, stated, { gel: 'straight', days: 370 }),
    )
    expect(quiet.filter((one) => alarmed(one, logged(one, stated, 365))).length).toBeLessThan(0.05 * 50)
  })

  it('walked by four times a year, too', () => {
    const quiet = Array.from({ length: 200 }, (_, at) =>
      drawnBox(31_000 + at, stated, { gel: 'straight', days: 370 }),
    )
    const wrongly = quiet.filter((one) => lookedAt(one, walkedBy(one, stated, 365), 365) !== null)
    expect(wrongly.length).toBeLessThan(0.05 * 200)
  })
})

describe('a lid that lets in ten times more', () => {
  const open = (at: number) => 100 + ((at * 37) % 120)
  const boxes = Array.from({ length: 60 }, (_, at) =>
    drawnBox(32_000 + at, stated, { gel: 'straight', days: 400, loose: { day: open(at), factor: 10 } }),
  )
  const found = boxes.map((one, at) => lookedAt(one, logged(one, stated, 380), open(at) + 28))

  it('is found within four weeks in at least nine boxes of ten', () => {
    expect(mean(found.map((one) => Number(one !== null)))).toBeGreaterThanOrEqual(0.9)
  })

  it('with the day it came loose, to within a week', () => {
    const off = found.flatMap((one, at) =>
      one ? [Math.abs(one.since - boxes[at]!.box.startedOn - open(at))] : [],
    )
    expect(mean(off.map((days) => Number(days <= 7)))).toBeGreaterThanOrEqual(0.9)
  })

  it('was not named before', () => {
    const before = boxes.filter((one, at) => lookedAt(one, logged(one, stated, 380), open(at) - 1) !== null)
    expect(before.length).toBeLessThan(0.05 * boxes.length)
  })
})
