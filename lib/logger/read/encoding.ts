import type { LogEncoding } from './log-form.ts'

const starts = (bytes: Uint8Array, ...mark: readonly number[]) => mark.every((byte, at) => bytes[at] === byte)

export interface FirstLook {
  readonly wide: 'utf-16le' | 'utf-16be' | null
  /** Bytes of the mark at the beginning. */
  readonly mark: number
  readonly binary: boolean
}

/** Every other byte nought tells UTF-16 without a mark; many unprintable bytes tell that it is no text. */
export function lookAt(head: Uint8Array): FirstLook {
  if (starts(head, 0xef, 0xbb, 0xbf)) return { wide: null, mark: 3, binary: false }
  if (starts(head, 0xff, 0xfe)) return { wide: 'utf-16le', mark: 2, binary: false }
  if (starts(head, 0xfe, 0xff)) return { wide: 'utf-16be', mark: 2, binary: false }
  const end = Math.min(head.length, 4096)
  let even = 0
  let odd = 0
  let control = 0
  for (let at = 0; at < end; at++) {
    const byte = head[at]!
    if (byte === 0) at % 2 === 0 ? even++ : odd++
    else if (byte < 9 || (byte > 13 && byte < 32)) control++
  }
  const pairs = end >> 1
  if (odd > pairs / 2 && even < pairs / 20) return { wide: 'utf-16le', mark: 0, binary: false }
  if (even > pairs / 2 && odd < pairs / 20) return { wide: 'utf-16be', mark: 0, binary: false }
  return { wide: null, mark: 0, binary: control * 20 > end }
}

/** UTF-16 as UTF-8, piece by piece; the last call flushes what a cut in the middle of a letter left. */
export function narrowed(wide: 'utf-16le' | 'utf-16be'): (piece: Uint8Array | null) => Uint8Array {
  const decoder = new TextDecoder(wide)
  const encoder = new TextEncoder()
  return (piece) =>
    encoder.encode(piece === null ? decoder.decode() : decoder.decode(piece, { stream: true }))
}

export interface LineDecoder {
  readonly decode: (bytes: Uint8Array, from: number, to: number) => string
  /** Letters that could not be read so far. */
  readonly lost: () => number
  readonly encoding: () => LogEncoding
}

// oxlint-disable-next-line no-control-regex
const ascii = /^[\u0000-\u007f]*$/

/** Lines as text: the first line that is not plain ASCII decides between UTF-8 and the old encoding of spreadsheets. */
export function openLineDecoder(wide: LogEncoding | null): LineDecoder {
  const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
  const lenient = new TextDecoder('utf-8', { ignoreBOM: true })
  const old = new TextDecoder('windows-1252')
  const latin = new TextDecoder('latin1')
  let decided: 'utf-8' | 'windows-1252' | null = wide ? 'utf-8' : null
  let lost = 0
  return {
    decode(bytes, from, to) {
      const piece = bytes.subarray(from, to)
      const plain = latin.decode(piece)
      if (ascii.test(plain)) return plain
      if (decided === null) {
        try {
          const text = strict.decode(piece)
          decided = 'utf-8'
          return text
        } catch {
          decided = 'windows-1252'
        }
      }
      if (decided === 'windows-1252') return old.decode(piece)
      const text = lenient.decode(piece)
      lost += text.split('\ufffd').length - 1
      return text
    },
    lost: () => lost,
    encoding: () => wide ?? decided ?? 'utf-8',
  }
}
