import { given, type Outcome } from '../base/outcome.ts'
import { packPlain, type PlainPacking } from '../boxes/bins-pack.ts'
import { readBins, type BinFlaw } from '../boxes/bins-read.ts'
import { openerOf, type Content } from './record-source.ts'

/** A second or two for whatever number of items: the more there are, the dearer a step. */
const stepsFor = (items: number): number =>
  Math.round(Math.min(200_000, Math.max(20_000, 2e7 / Math.max(1, items))))

/** `{ capacity, items: [size] }` packed into as few bins as can be found, with how few there could be at the least. */
export async function packBins(content: Content): Promise<Outcome<PlainPacking, readonly BinFlaw[]>> {
  const pieces: Uint8Array[] = []
  for await (const piece of openerOf(content)()) pieces.push(piece)
  const read = readBins(
    Buffer.concat(pieces)
      .toString('utf8')
      .replace(/^\uFEFF/, ''),
  )
  if (!read.ok) return read
  const { capacity, sizes } = read.value
  return given(packPlain(capacity, sizes, { seed: 1, steps: stepsFor(sizes.length) }))
}
