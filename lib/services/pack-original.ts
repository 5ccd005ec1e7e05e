import { promisify } from 'node:util'
import { gunzip, gzip } from 'node:zlib'

/** Below what any engine takes in one cell of text [letters]. */
const partLetters = 1_000_000

/** The bytes of a file as parts of text, to be kept and given back to the last bit. */
export async function packOriginal(bytes: Uint8Array): Promise<readonly string[]> {
  const text = (await promisify(gzip)(bytes)).toString('base64')
  return Array.from({ length: Math.ceil(text.length / partLetters) }, (_, part) =>
    text.slice(part * partLetters, (part + 1) * partLetters),
  )
}

export async function unpackOriginal(parts: readonly string[]): Promise<Uint8Array> {
  return promisify(gunzip)(Buffer.from(parts.join(''), 'base64'))
}
