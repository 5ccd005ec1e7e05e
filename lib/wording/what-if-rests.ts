import { capital } from './capital.ts'
import { countWords, listWords } from './list.ts'
import { aboutKilogramWords, roundWords } from './what-if-figures.ts'

/** Why a box is left out, after the boxes: `TW-B03 and TW-B11: nobody has written how much gel they hold`. */
const leftOutWords = {
  'begins-over': {
    one: 'its gel comes no drier than its limit, so that renewing it does not help: dry it further first',
    many: 'their gel comes no drier than their limit, so that renewing it does not help: dry it further first',
  },
  'film-disagrees': {
    one: 'by print its film alone lets in more than it was seen to take up, so that another film cannot be reckoned',
    many: 'by print their film alone lets in more than they were seen to take up, so that another film cannot be reckoned',
  },
  'no-gel': {
    one: 'nobody has written how much gel it holds',
    many: 'nobody has written how much gel they hold',
  },
  'no-volume': {
    one: 'nobody has written how large it is',
    many: 'nobody has written how large they are',
  },
  'no-start': {
    one: 'nobody has written when its gel was last renewed',
    many: 'nobody has written when their gel was last renewed',
  },
  'no-limit': {
    one: 'nothing in it limits its humidity, so no gel falls due',
    many: 'nothing in them limits their humidity, so no gel falls due',
  },
  tub: { one: 'a tub of water, which holds no gel', many: 'tubs of water, which hold no gel' },
} as const

const namedAtMost = 8

/** Some names, and how many more there are. */
export function someWords(names: readonly string[], most = namedAtMost): string {
  if (names.length <= most) return listWords(names)
  return listWords([...names.slice(0, most), `${names.length - most} more`])
}

interface LeftOut {
  readonly because: keyof typeof leftOutWords
  readonly boxes: readonly string[]
}

/** `2 boxes, TW-B03 and TW-B11: nobody has written how large they are.` */
export function leftOutLine({ because, boxes }: LeftOut, most?: number): string {
  const { one, many } = leftOutWords[because]
  if (boxes.length === 1) return `${boxes[0]}: ${one}.`
  return `${countWords(boxes.length, 'box', 'boxes')}, ${someWords(boxes, most)}: ${many}.`
}

interface Told {
  readonly counted: number
  readonly mayComeDamp: readonly string[]
  readonly noRoomForGel: readonly string[]
  readonly doubtful: readonly string[]
  readonly doubtfulRenewalsPerYear: number
}

/** What to take with care in an answer. */
export function careLines({ counted, mayComeDamp, noRoomForGel, ...strays }: Told): readonly string[] {
  const lines: string[] = []
  const named = (names: readonly string[], one: string, many: string) =>
    names.length === 0 || counted === 1 ? capital(one) : `${someWords(names)}: ${many}`
  if (noRoomForGel.length > 0)
    lines.push(
      `${named(noRoomForGel, 'so much gel has no room in the box', 'so much gel has no room in them')}.`,
    )
  if (mayComeDamp.length > 0)
    lines.push(
      `${named(mayComeDamp, 'its gel may come no drier than its limit', 'their gel may come no drier than their limit')}. Then no renewal helps, and those cases are left out of the ranges. Write down to what humidity the gel is dried, or read a strip once it is in.`,
    )
  if (strays.doubtful.length > 0) lines.push(doubtfulLine({ counted, ...strays }))
  return lines
}

/** Boxes that do not follow the reckoning, and how much of the sum is theirs. */
export function doubtfulLine({
  counted,
  doubtful,
  doubtfulRenewalsPerYear: theirs,
}: Pick<Told, 'counted' | 'doubtful' | 'doubtfulRenewalsPerYear'>): string {
  const strays = 'what was read strays from the reckoning more than it should'
  const look = doubtful.length === 1 ? 'Look at the box' : 'Look at these boxes'
  const end = `${look} before anything is bought for ${doubtful.length === 1 ? 'it' : 'them'}.`
  if (counted === 1) return `${capital(strays)}. ${end}`
  const share = roundWords(theirs)
  const renewals =
    share === '0'
      ? ''
      : ` Of the renewals a year now, about ${share} are reckoned for ${doubtful.length === 1 ? 'it' : 'them'}.`
  return `${someWords(doubtful)}: ${strays}.${renewals} ${end}`
}

interface RestsOn {
  readonly airChanges: { readonly [Way in keyof typeof leakWords]?: number }
  readonly roomsSupposed: readonly string[]
}

const leakWords = {
  logger: 'by their own logger',
  rounds: 'by strips read in them',
  'earlier-gel': 'by what was read of an earlier filling in them',
  'like-boxes': 'as other boxes of their model do',
  written: 'as somebody wrote it',
  assumed: 'only as lidded boxes are supposed to be',
} as const

/** What an answer rests on, and how its ranges are made. */
export function whatIfRestsLines({ airChanges, roomsSupposed }: RestsOn): readonly string[] {
  const ways = (Object.keys(leakWords) as (keyof typeof leakWords)[]).filter(
    (way) => (airChanges[way] ?? 0) > 0,
  )
  const all = ways.reduce((sum, way) => sum + (airChanges[way] ?? 0), 0)
  const one = all === 1
  const leak = one
    ? `How much air it lets in is taken ${leakWords[ways[0] ?? 'assumed'].replace('their', 'its').replace('in them', 'in it')}.`
    : `How much air a box lets in is taken ${listWords(ways.map((way) => `${leakWords[way]} for ${airChanges[way]}`))}.`
  const rooms =
    roomsSupposed.length === 0
      ? []
      : [
          `The air of ${someWords(roomsSupposed.map((room) => (room === '' ? 'boxes in no named room' : room)))} is only supposed: nobody has written it and no logger has read it.`,
        ]
  const ranges = one
    ? 'The ranges hold in eight cases of ten.'
    : 'The ranges of the boxes are added as if all of them strayed the same way, so that the whole lies within them eight times in ten, or more often.'
  return [
    leak,
    ...rooms,
    ranges,
    'It is reckoned as if gel were renewed each time the box comes to what its finds bear, dried as it was the last time, and the seasons came as they do.',
  ]
}

/** Gel that must be bought or dried once, before it saves anybody a walk. */
export function firstFillingWords(moreKg: number): string {
  return moreKg > 0
    ? `Before that, ${aboutKilogramWords(moreKg)} more of dry gel goes into the boxes once.`
    : `${aboutKilogramWords(-moreKg)} of dry gel less is needed in the boxes.`
}
