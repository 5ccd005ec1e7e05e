/** One box of a walk through the store, in the order the boxes stand. */
export interface WalkStop {
  readonly box: string
  readonly room: string
  readonly shelf: string
  /** In water: it has no strip and no gel. */
  readonly tub: boolean
  /** What is to be known before one looks: what it must hold, what was last seen, what is wrong. */
  readonly needs: string
  readonly lastSeen: string | null
  readonly wrong: string | null
  /** What stops whoever would open it: above everything, never folded. */
  readonly stops: readonly string[]
  /** Day [ISO] of the last look; null: never. */
  readonly readOn: string | null
}

/** What somebody saw of one box, kept on their device until it is sent. */
export interface WalkEntry {
  /** Of this entry alone, so that sent twice it is there once. */
  readonly id: string
  readonly project: string
  readonly box: string
  readonly on: string
  readonly atMs: number
  readonly seen: WalkSeen
  /** When the store had it; null: it waits. */
  readonly sentMs: number | null
}

export interface WalkSeen {
  /** Between these [%]; the open ends are 0 and 100. */
  readonly strip: readonly [number, number] | null
  readonly gelColour: string | null
  readonly lid: 'seated' | 'not-seated' | null
  readonly waterChanged: boolean
}

export const nothingSeen: WalkSeen = { strip: null, gelColour: null, lid: null, waterChanged: false }

export const saysSomething = ({ strip, gelColour, lid, waterChanged }: WalkSeen): boolean =>
  strip !== null || gelColour !== null || lid !== null || waterChanged

/** The fields of an indicator strip: what was read lies between the last that turned and the next. */
const fields = [5, 10, 15, 20, 30, 40, 50, 60]

export const stripIntervals: readonly (readonly [number, number])[] = [
  [0, 5],
  ...fields.slice(1).map((field, index) => [fields[index] ?? 0, field] as const),
  [60, 100],
]

/** Colours as they are seen; what they mean depends on the gel and is said elsewhere. */
export const gelColours = ['orange', 'green', 'blue', 'pink', 'colourless', 'mixed'] as const

/** Rooms of the walk with how many boxes each has, in their order. */
export function roomsOf(
  stops: readonly WalkStop[],
): readonly { readonly room: string; readonly boxes: number }[] {
  return [...Map.groupBy(stops, ({ room }) => room)].map(([room, own]) => ({ room, boxes: own.length }))
}

/** Boxes that have an entry of that day. */
export function doneOn(entries: readonly WalkEntry[], on: string): ReadonlySet<string> {
  return new Set(entries.filter((entry) => entry.on === on).map(({ box }) => box))
}

/** The next box after a place that has no entry yet, from the beginning again where none is left behind it; null: all have one. */
export function nextStop(
  stops: readonly WalkStop[],
  done: ReadonlySet<string>,
  after: number,
): number | null {
  for (let step = 1; step <= stops.length; step += 1) {
    const at = (after + step) % stops.length
    if (!done.has(stops[at]?.box ?? '')) return at
  }
  return null
}

/** The box a scanner or a hand typed: its name, whatever its case and spaces; null where no box is called so. */
export function stopCalled(stops: readonly WalkStop[], typed: string): number | null {
  const bare = (text: string) => text.toLowerCase().replaceAll(/[\s_-]+/g, '')
  const at = stops.findIndex(({ box }) => bare(box) === bare(typed))
  return at === -1 ? null : at
}
