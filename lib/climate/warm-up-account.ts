import { given, refused, type Outcome } from '../base/outcome.ts'
import { outside, type OutOfValidity } from './out-of-validity.ts'
import { packTimeConstantS, plateTimeConstantS, timeToReachS, type Plate } from './warm-up.ts'

/** What is brought in: a bare plate, or a pack that stays closed. */
export type Brought =
  | { readonly kind: 'plate'; readonly plate: Plate }
  | {
      readonly kind: 'pack'
      /** Of everything in it, for each degree [J/K]. */
      readonly heatJPerK: number
      readonly outsideM2: number
      readonly wallResistanceM2KPerW: number
    }

export interface WarmUpAsked {
  readonly brought: Brought
  readonly startC: number
  readonly roomC: number
  /** Where the air of the room lets its water fall, as dew or as frost [°C]; null where it is too dry to do so. */
  readonly wetAtC: number | null
  /** Resistance of the still air at a face, best and worst [m²·K/W]. */
  readonly airResistanceM2KPerW: { readonly low: number; readonly high: number }
}

/** Times [s], quickest and slowest; Infinity where it never comes. */
export interface Seconds {
  readonly low: number
  readonly high: number
}

export interface WarmUpAccount {
  readonly asked: WarmUpAsked
  /** Until nothing gathers on it; 0 where nothing does. */
  readonly clear: Seconds
  /** Until it is within a degree of the room. */
  readonly warm: Seconds
}

/** Within this of the room it is as warm as the room: our own word for it [°C]. */
const asWarmC = 1
/** Where the saturation equations hold; colder than that nothing is brought in. */
const broughtC = { from: -100, to: 200 } as const
/** A face of a plate behind so much resistance of its own lags behind the other [m]. */
const thickestM = (conductivityWPerMK: number, airResistanceM2KPerW: number) =>
  0.2 * conductivityWPerMK * airResistanceM2KPerW

function beyond({ brought, startC, roomC, airResistanceM2KPerW }: WarmUpAsked): readonly OutOfValidity[] {
  const source = 'mechanical-engineers-handbook-4'
  const above = (quantity: string, value: number, to = Number.POSITIVE_INFINITY) => ({
    quantity,
    value,
    from: Number.MIN_VALUE,
    to,
    source,
  })
  return outside([
    { quantity: 'startC', value: startC, ...broughtC, source },
    { quantity: 'roomC', value: roomC, ...broughtC, source },
    ...(brought.kind === 'plate'
      ? [
          above(
            'thicknessM',
            brought.plate.thicknessM,
            thickestM(brought.plate.conductivityWPerMK, airResistanceM2KPerW.low),
          ),
        ]
      : [
          above('heatJPerK', brought.heatJPerK),
          above('outsideM2', brought.outsideM2),
          {
            quantity: 'wallResistanceM2KPerW',
            value: brought.wallResistanceM2KPerW,
            from: 0,
            to: Number.POSITIVE_INFINITY,
            source,
          },
        ]),
  ])
}

const constantS = (brought: Brought, airResistanceM2KPerW: number) =>
  brought.kind === 'plate'
    ? plateTimeConstantS(brought.plate, 1 / airResistanceM2KPerW)
    : packTimeConstantS(
        brought.heatJPerK,
        brought.outsideM2,
        brought.wallResistanceM2KPerW,
        1 / airResistanceM2KPerW,
      )

/**
 * How long something brought in stays wet and how long until it is as warm as the room [s], or what lies out of range.
 * @param asked [m, kg/m³, J/K, m², m²·K/W, °C] what is brought in, how cold, into which room
 * @source plateTimeConstantS, packTimeConstantS and timeToReachS at the best and the worst resistance of still air
 * @valid temperatures of -100 to 200 °C; a plate of one temperature throughout; a pack whose walls hold back more than its contents
 * @agrees 0.1 % with 371 s for 5 mm of iron from 5 °C clearing the dew point of a room at 20 °C and 50 %
 */
export function warmUpAccount(asked: WarmUpAsked): Outcome<WarmUpAccount, readonly OutOfValidity[]> {
  const problems = beyond(asked)
  if (problems.length > 0) return refused(problems)
  const { brought, startC, roomC, wetAtC, airResistanceM2KPerW } = asked
  const until = (wantedC: number): Seconds => ({
    low: timeToReachS(constantS(brought, airResistanceM2KPerW.low), startC, roomC, wantedC),
    high: timeToReachS(constantS(brought, airResistanceM2KPerW.high), startC, roomC, wantedC),
  })
  const nearRoomC = Math.abs(startC - roomC) <= asWarmC ? startC : roomC - Math.sign(roomC - startC) * asWarmC
  return given({
    asked,
    clear: clearOf(startC, roomC, wetAtC, until),
    warm: until(nearRoomC),
  })
}

/** A thing warmer than where the air lets its water fall stays dry, unless the room itself is colder than that. */
function clearOf(
  startC: number,
  roomC: number,
  wetAtC: number | null,
  until: (wantedC: number) => Seconds,
): Seconds {
  if (wetAtC === null || (startC > wetAtC && roomC > wetAtC)) return { low: 0, high: 0 }
  if (roomC <= wetAtC) return { low: Number.POSITIVE_INFINITY, high: Number.POSITIVE_INFINITY }
  return until(wetAtC)
}
