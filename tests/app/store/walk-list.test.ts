import { describe, expect, test } from 'vitest'
import { readSent } from '../../../app/store/walk/read-sent.ts'
import {
  doneOn,
  nextStop,
  nothingSeen,
  saysSomething,
  stopCalled,
  stripIntervals,
  type WalkEntry,
  type WalkStop,
} from '../../../lib/papers/walk-list.ts'
import { intervalWords, seenOfBoxWords, waitingWords } from '../../../lib/wording/walk.ts'

const stop = (box: string): WalkStop => ({
  box,
  room: 'Metal store',
  shelf: 'A',
  tub: false,
  needs: '',
  lastSeen: null,
  wrong: null,
  stops: [],
  readOn: null,
})
const stops = ['TW-B01', 'TW-B02', 'TW-B03'].map(stop)
const entry = (box: string, on = '2026-11-25'): WalkEntry => ({
  id: `${box} ${on}`,
  project: 'p',
  box,
  on,
  atMs: 1,
  seen: { ...nothingSeen, strip: [5, 10] },
  sentMs: null,
})

describe('a walk', () => {
  test('goes on with the next box nobody has read today, round to those left out', () => {
    const done = doneOn([entry('TW-B02'), entry('TW-B03', '2026-08-01')], '2026-11-25')
    expect(nextStop(stops, done, 0)).toBe(2)
    expect(nextStop(stops, done, 2)).toBe(0)
    expect(nextStop(stops, new Set(['TW-B01', 'TW-B02', 'TW-B03']), 1)).toBeNull()
    expect(nextStop([], new Set(), -1)).toBeNull()
  })
  test('a box is found however it was typed', () => {
    expect(stopCalled(stops, 'tw b02')).toBe(1)
    expect(stopCalled(stops, 'TWB03')).toBe(2)
    expect(stopCalled(stops, 'TW-B99')).toBeNull()
  })
  test('the fields of a strip leave no gap and do not overlap', () => {
    expect(stripIntervals[0]?.[0]).toBe(0)
    expect(stripIntervals.at(-1)?.[1]).toBe(100)
    for (const [at, [low]] of stripIntervals.entries())
      if (at > 0) expect(low).toBe(stripIntervals[at - 1]?.[1])
  })
  test('what was seen is told as an interval, never as one figure', () => {
    expect(intervalWords([0, 5])).toBe('below 5')
    expect(intervalWords([60, 100])).toBe('above 60')
    expect(
      seenOfBoxWords({ strip: [10, 15], gelColour: 'orange', lid: 'not-seated', waterChanged: false }),
    ).toBe('strip between 10 and 15 %, gel orange, lid not seated')
    expect(saysSomething(nothingSeen)).toBe(false)
  })
  test('what waits on the device is said with what becomes of it', () => {
    expect(waitingWords(2, false)).toBe(
      '2 boxes kept on this device; no network. They are sent as soon as there is one.',
    )
    expect(waitingWords(0, true)).toBe('All that you wrote is in the store.')
  })
})

describe('what a phone sends', () => {
  test('is taken in its form and refused in any other', () => {
    expect(readSent({ project: 'p', entries: [entry('TW-B01')] })?.entries).toHaveLength(1)
    for (const wrong of [
      null,
      'text',
      {},
      { project: 'p', entries: [{ box: 'TW-B01' }] },
      { project: 'p', entries: 'x' },
    ])
      expect(readSent(wrong)).toBeNull()
  })
})
