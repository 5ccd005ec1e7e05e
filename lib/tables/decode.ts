export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'

export interface Decoded {
  readonly text: string
  readonly encoding: Encoding
  /** How many places could not be read and stand as � in the text. */
  readonly undecodable: number
}

const starts = (bytes: Uint8Array, ...mark: readonly number[]) => mark.every((byte, at) => bytes[at] === byte)

/** Which half of each pair is zero tells UTF-16 without a mark; zeros anywhere else mean that it is no text. */
function zeros(bytes: Uint8Array): { readonly even: number; readonly odd: number; readonly pairs: number } {
  let even = 0
  let odd = 0
  const end = Math.min(bytes.length, 4096)
  for (let at = 0; at < end; at++) if (bytes[at] === 0) at % 2 === 0 ? even++ : odd++
  return { even, odd, pairs: end >> 1 }
}

/** The encoding that the first bytes show; `null`: this is no text. UTF-8 is only a guess until all of it was read. */
export function encodingOf(bytes: Uint8Array): Encoding | null {
  if (starts(bytes, 0xef, 0xbb, 0xbf)) return 'utf-8'
  if (starts(bytes, 0xff, 0xfe)) return 'utf-16le'
  if (starts(bytes, 0xfe, 0xff)) return 'utf-16be'
  const { even, odd, pairs } = zeros(bytes)
  if (even === 0 && odd === 0) return 'utf-8'
  if (odd > pairs / 2 && even < pairs / 20) return 'utf-16le'
  if (even > pairs / 2 && odd < pairs / 20) return 'utf-16be'
  return null
}

const lost = /\ufffd/g
const count = (text: string, what: RegExp) => text.match(what)?.length ?? 0

/** Old spreadsheets write windows-1252; a few broken places in a text that is UTF-8 otherwise do not make it that. */
function notQuiteUtf8(bytes: Uint8Array): Decoded {
  const text = new TextDecoder('utf-8').decode(bytes)
  const undecodable = count(text, lost)
  // oxlint-disable-next-line no-control-regex
  if (count(text, /[^\u0000-\u007f\ufffd]/g) > undecodable) return { text, encoding: 'utf-8', undecodable }
  return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252', undecodable: 0 }
}

// oxlint-disable-next-line no-control-regex
const noText = /[\u0000-\u0008\u000e-\u001a\u001c-\u001f]/g

/** The text of a file, or null where the bytes are none. */
export function decode(bytes: Uint8Array): Decoded | null {
  const encoding = encodingOf(bytes)
  if (encoding === null) return null
  let decoded: Decoded
  try {
    decoded = { text: new TextDecoder(encoding, { fatal: true }).decode(bytes), encoding, undecodable: 0 }
  } catch {
    const text = encoding === 'utf-8' ? null : new TextDecoder(encoding).decode(bytes)
    decoded = text === null ? notQuiteUtf8(bytes) : { text, encoding, undecodable: count(text, lost) }
  }
  return count(decoded.text.slice(0, 65_536), noText) > decoded.text.length / 100 ? null : decoded
}
