import type { IsoDate } from '../base/calendar.ts'
import { given, refused, type Outcome } from '../base/outcome.ts'
import { sortKey } from '../base/sort-key.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { indoorLimits, judgeCoupon, type CouponVerdict, type IndoorLimit } from '../boxes/air-coupon.ts'
import type { Figures } from '../boxes/figure-value.ts'
import { couponMetals, type CouponMetal, type CouponRefusal, type Weighed } from '../climate/coupon.ts'
import type { DiaryEntry } from './diary.ts'
import type { Project } from './kept.ts'
import type { World } from './ports.ts'
import { couponOf, type CouponRead } from './show-air-coupon.ts'
import { airMeaning, type AirMeaning } from './show-air-meaning.ts'

export interface AirShown {
  readonly project: Project
  readonly today: IsoDate
  /** In the order of their names; only rooms that a coupon hung in. */
  readonly rooms: readonly AirOfRoom[]
  /** Where a coupon may have hung. */
  readonly places: { readonly rooms: readonly string[]; readonly boxes: readonly string[] }
  readonly limits: readonly MetalLimits[]
  /** Of the metals that hung here; of all where none did yet. */
  readonly meaning: readonly AirMeaning[]
}

export interface AirOfRoom {
  /** Empty: boxes that name no room, or that nobody lists. */
  readonly room: string
  /** The room itself first, then its boxes. */
  readonly places: readonly { readonly box: string | null; readonly coupons: readonly CouponShown[] }[]
}

export interface CouponShown {
  readonly entry: DiaryEntry<'coupon'>
  readonly read: CouponRead
  readonly judged: Outcome<CouponVerdict, readonly CouponRefusal[]>
  /** Empty where none are known for its metal. */
  readonly limits: readonly IndoorLimit[]
}

export interface MetalLimits {
  readonly metal: CouponMetal
  readonly weighed: Weighed
  readonly limits: readonly IndoorLimit[]
}

const ways = ['gain', 'loss'] as const satisfies readonly Weighed[]
const byName = (a: string, b: string) => (sortKey(a) < sortKey(b) ? -1 : 1)

function shown(entry: DiaryEntry<'coupon'>, knowledge: Figures): CouponShown {
  const read = couponOf(entry.given, knowledge)
  return {
    entry,
    read,
    judged: judgeCoupon(read.coupon, knowledge),
    limits: indoorLimits(read.coupon, knowledge),
  }
}

/** The air of the store, as every coupon told it that ever hung there: by room and box, the newest first. */
export async function showAir({ store, knowledge, today }: World, projectId: string): Answer<AirShown> {
  return store.read(async (reads) => {
    const project = await reads.projects.byId(projectId)
    if (!project) return refused(missing('project', projectId))
    const boxes = await reads.boxes.ofProject(projectId)
    const roomOfBox = new Map(boxes.map(({ given: box }) => [box.box, box.room ?? '']))
    const entries = (await reads.diary.list({
      projectId,
      kinds: ['coupon'],
    })) as readonly DiaryEntry<'coupon'>[]
    const hung = couponMetals.filter((metal) => entries.some((entry) => entry.given.metal === metal))
    const rooms = Map.groupBy(entries.toReversed(), ({ room, box }) => room ?? roomOfBox.get(box ?? '') ?? '')
    return given({
      project,
      today: today(),
      rooms: [...rooms]
        .map(([room, own]) => ({ room, places: placesOf(own, knowledge) }))
        .toSorted((a, b) => byName(a.room, b.room)),
      places: {
        rooms: (await reads.rooms.ofProject(projectId)).map(({ given: room }) => room.room).toSorted(byName),
        boxes: boxes.map(({ given: box }) => box.box).toSorted(byName),
      },
      limits: couponMetals.flatMap((metal) =>
        ways.map((weighed) => ({ metal, weighed, limits: indoorLimits({ metal, weighed }, knowledge) })),
      ),
      meaning: airMeaning(hung.length === 0 ? couponMetals : hung, knowledge),
    })
  })
}

function placesOf(entries: readonly DiaryEntry<'coupon'>[], knowledge: Figures): AirOfRoom['places'] {
  return [...Map.groupBy(entries, ({ box }) => box ?? '')]
    .toSorted(([a], [b]) => byName(a, b))
    .map(([box, own]) => ({
      box: box === '' ? null : box,
      coupons: own.map((entry) => shown(entry, knowledge)),
    }))
}
