import { given, refused, type Outcome } from '../base/outcome.ts'

/** What is wrong with a packing problem as it was given; every fault is told, with where it is. */
export type BinFlaw =
  | { readonly code: 'not-json'; readonly found: string }
  | { readonly code: 'no-object' }
  | { readonly code: 'capacity'; readonly found: unknown }
  | { readonly code: 'no-items' }
  | { readonly code: 'size'; readonly item: number; readonly found: unknown }
  | { readonly code: 'too-large'; readonly item: number; readonly size: number; readonly capacity: number }
  | { readonly code: 'too-fine'; readonly item: number | null; readonly found: number }
  | { readonly code: 'too-many'; readonly items: number; readonly most: number }

/** A problem in whole numbers. */
export interface PlainBins {
  readonly capacity: number
  readonly sizes: readonly number[]
}

const mostItems = 200_000
const mostDecimals = 6

/** The problem as it stands in JSON, `{ capacity, items: [size] }`, or everything that is wrong with it. */
export function readBins(text: string): Outcome<PlainBins, readonly BinFlaw[]> {
  let content: unknown
  try {
    content = JSON.parse(text)
  } catch (flaw) {
    return refused([{ code: 'not-json', found: flaw instanceof Error ? flaw.message : String(flaw) }])
  }
  if (typeof content !== 'object' || content === null || Array.isArray(content))
    return refused([{ code: 'no-object' }])
  const { capacity, items } = content as Readonly<Record<string, unknown>>
  const problems: BinFlaw[] = []
  if (!isSize(capacity)) problems.push({ code: 'capacity', found: capacity })
  else if (decimals(capacity) > mostDecimals) problems.push({ code: 'too-fine', item: null, found: capacity })
  if (!Array.isArray(items)) problems.push({ code: 'no-items' })
  const sizes: readonly unknown[] = Array.isArray(items) ? items : []
  if (sizes.length > mostItems) problems.push({ code: 'too-many', items: sizes.length, most: mostItems })
  else
    sizes.forEach((size, item) => {
      if (!isSize(size)) problems.push({ code: 'size', item, found: size })
      else if (decimals(size) > mostDecimals) problems.push({ code: 'too-fine', item, found: size })
      else if (isSize(capacity) && size > capacity) problems.push({ code: 'too-large', item, size, capacity })
    })
  if (problems.length > 0 || !isSize(capacity)) return refused(problems)
  const read = sizes.filter(isSize)
  // Whole numbers, so that three times 0.1 fills 0.3 and no more.
  const scale = 10 ** Math.max(0, ...new Set([capacity, ...read].map(decimals)))
  const whole = (size: number) => Math.round(size * scale)
  return given({ capacity: whole(capacity), sizes: read.map(whole) })
}

const isSize = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value > 0 && value <= 1e9

/** Digits behind the point, as the number is written shortest. */
function decimals(value: number): number {
  const [digits = '', exponent = '0'] = String(value).split('e')
  return Math.max(0, (digits.split('.')[1]?.length ?? 0) - Number(exponent))
}
