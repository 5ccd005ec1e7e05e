import { describe, expect, it } from 'vitest'
import type { ClosedBox, Sighting } from '../../lib/boxes/box.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { logNext, type LogCandidate } from '../../lib/boxes/log-next.ts'
import { box, loggerError, readings, room, strip, trade } from './learn-samples.ts'

const today = box.startedOn + 120

function candidate(
  name: string,
  sightings: readonly Sighting[],
  { findsAtRisk = 3, logged = false, ...of }: Partial<LogCandidate & ClosedBox> = {},
): LogCandidate {
  const own = { ...box, model: name, ...of, name }
  return {
    box: own,
    surroundings: room,
    estimate: learnLeak(own, room, sightings, trade),
    findsAtRisk,
    logged,
  }
}
const ask = (boxes: readonly LogCandidate[], most = 6) =>
  logNext(boxes, { today, most, errorRhPercent: loggerError })

describe('where a logger would tell most', () => {
  it('puts a box nobody read before one that is known', () => {
    const [first, second] = ask([candidate('read', readings(110)), candidate('unread', [])])
    expect(first!.box).toBe('unread')
    expect(first!.reasons).toContain('never-read')
    expect(second!.reasons).not.toContain('never-read')
    expect(first!.spreadDaysAfter).toBeLessThan(0.7 * first!.spreadDays)
  })

  it('weighs by the finds at risk, and leaves out where there are none to gain for', () => {
    const boxes = [candidate('few', [], { findsAtRisk: 1 }), candidate('many', [], { findsAtRisk: 20 })]
    expect(ask(boxes).map((next) => next.box)).toEqual(['many', 'few'])
    expect(ask([candidate('empty', [], { findsAtRisk: 0 })])).toEqual([])
  })

  it('puts a box that may be over its limit first, and says so', () => {
    const safe = candidate('safe', [strip(110, 6)], { gelKg: 1 })
    const doubtful = candidate('doubtful', [strip(110, 13)])
    const [first] = ask([safe, doubtful])
    expect(first!.box).toBe('doubtful')
    expect(first!.reasons[0]).toBe('may-be-over')
    expect(first!.overNow).toBeGreaterThan(0.1)
  })

  it('passes over boxes that have a logger or no limit', () => {
    const boxes = [
      candidate('logged', [], { logged: true }),
      candidate('free', [], { limitRhPercent: null }),
      candidate('left', []),
    ]
    expect(ask(boxes).map((next) => next.box)).toEqual(['left'])
  })

  it('counts what the others of its model would learn, while none of them is logged', () => {
    const like = (name: string, of = {}) => candidate(name, [], { model: 'clip box', ...of })
    const [first] = ask([like('a'), like('b'), like('c')])
    expect(first!.othersTaught).toBe(2)
    expect(first!.reasons).toContain('teaches-others')
    const [beside] = ask([like('a'), like('b'), like('c', { logged: true })])
    expect(beside!.othersTaught).toBe(0)
    const [far] = ask([like('a'), like('b', { room: 'Store 2' })])
    expect(far!.othersTaught).toBe(0)
  })

  it('names no more than were asked for, the same ones in whatever order the boxes come', () => {
    const boxes = Array.from({ length: 9 }, (_, at) => candidate(`box ${at}`, [], { findsAtRisk: at + 1 }))
    const named = ask(boxes, 3).map((next) => next.box)
    expect(named).toEqual(['box 8', 'box 7', 'box 6'])
    expect(ask(boxes.toReversed(), 3).map((next) => next.box)).toEqual(named)
  })
})
