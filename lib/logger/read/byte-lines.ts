/** Longer lines are no readings; they are told and passed over without being kept. */
export const longestLine = 65_536

export interface LineTaker {
  /** Whole lines: `to` is right behind the last line feed. */
  readonly lines: (bytes: Uint8Array, from: number, to: number) => void
  /** What stands behind the last line feed. */
  readonly rest: (bytes: Uint8Array) => void
  readonly tooLong: (beginning: Uint8Array) => void
}

export interface ByteFeed {
  readonly feed: (piece: Uint8Array) => void
  readonly end: () => void
}

const lineFeed = 10

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length)
  both.set(a)
  both.set(b, a.length)
  return both
}

/** Cuts pieces of a file into whole lines without copying more than the line that lies across two of them. */
export function openByteFeed(taker: LineTaker): ByteFeed {
  let held: Uint8Array = new Uint8Array()
  let passing = false
  return {
    feed(piece) {
      let from = 0
      if (passing || held.length > 0) {
        const next = piece.indexOf(lineFeed)
        if (next === -1) {
          if (passing) return
          held = joined(held, piece)
          if (held.length > longestLine) {
            taker.tooLong(held)
            held = new Uint8Array()
            passing = true
          }
          return
        }
        from = next + 1
        if (!passing) {
          const line = joined(held, piece.subarray(0, from))
          held = new Uint8Array()
          taker.lines(line, 0, line.length)
        }
        passing = false
      }
      const to = piece.lastIndexOf(lineFeed) + 1
      if (to > from) taker.lines(piece, from, to)
      held = piece.slice(Math.max(to, from))
      if (held.length > longestLine) {
        taker.tooLong(held)
        held = new Uint8Array()
        passing = true
      }
    },
    end() {
      if (held.length > 0) taker.rest(held)
    },
  }
}
