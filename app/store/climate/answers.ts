import { rhOverWarmedGelPercent, type BetweenLaws } from '../../../lib/climate/gel-warmed.ts'
import { humidityAccount, type HumidityAccount } from '../../../lib/climate/humidity-account.ts'
import { rhAtSurfacePercent, highestRoomRhPercent } from '../../../lib/climate/surface.ts'
import type { IronCeiling } from '../../../lib/wording/climate-iron.ts'
import {
  changeAnswer,
  roomHeadline,
  surfaceAnswer,
  type ToldAnswer,
} from '../../../lib/wording/climate-room.ts'
import { outOfValidityWords } from '../../../lib/wording/humidity.ts'
import { conventionWords, readingPart } from '../../../lib/wording/humidity-parts.ts'
import { figureOf, ironIds, type PageFigures } from './figures.ts'
import type { ReadTyped } from './read-typed.ts'

/** An answer, or why there is none; null while something it needs is not written. */
export type Answered<Extra = object> =
  | (ToldAnswer & Extra & { readonly refused?: undefined })
  | { readonly refused: readonly string[] }
  | null

export interface Answers {
  readonly room: Answered<{ readonly account: HumidityAccount }>
  readonly change: Answered<{ readonly account: HumidityAccount; readonly gel: BetweenLaws | null }>
  readonly surface: Answered<{
    readonly account: HumidityAccount
    readonly iron: readonly IronCeiling[]
  }>
}

type Second = Partial<Pick<HumidityAccount['asked'], 'toTemperatureC' | 'surfaceTemperatureC'>>

/** What the reading of the room says; null where it is not written. */
function accountOf({ numbers, choices }: ReadTyped, second: Second = {}) {
  const { roomC, roomRh, pressureHpa } = numbers
  if (roomC === null || roomRh === null || pressureHpa === null) return null
  return humidityAccount({
    temperatureC: roomC,
    rhPercent: roomRh,
    convention: choices.convention,
    airPressurePa: pressureHpa * 100,
    toTemperatureC: null,
    surfaceTemperatureC: null,
    ...second,
  })
}

type Account = NonNullable<ReturnType<typeof accountOf>>

function told<Extra extends object>(
  account: Account | null,
  tell: (account: HumidityAccount) => (ToldAnswer & Extra) | null,
): Answered<Extra> {
  if (account === null) return null
  return account.ok ? tell(account.value) : { refused: account.problems.map(outOfValidityWords) }
}

function ironAt({ asked }: HumidityAccount, surfaceC: number, figures: PageFigures): readonly IronCeiling[] {
  const { temperatureC, rhPercent, convention } = asked
  return ironIds.map((figure) => {
    const ceilingPercent = figureOf(figures, figure).value
    return {
      figure,
      ceilingPercent,
      surfacePercent: rhAtSurfacePercent(rhPercent, temperatureC, surfaceC, convention),
      roomAtMostPercent: highestRoomRhPercent(temperatureC, surfaceC, ceilingPercent, convention),
    }
  })
}

/** Everything the page answers about the air itself, from what stands in its blanks. */
export function answersOf(read: ReadTyped, figures: PageFigures): Answers {
  const { roomC, toC, gelRh, surfaceC } = read.numbers
  return {
    room: told(accountOf(read), (account) => ({
      headline: roomHeadline(account),
      rows: readingPart(account).rows,
      lines: [conventionWords[account.asked.convention]],
      account,
    })),
    change:
      toC === null || gelRh === null || roomC === null
        ? null
        : told(accountOf(read, { toTemperatureC: toC }), (account) => {
            const gel = rhOverWarmedGelPercent(gelRh, roomC, toC)
            const answer = changeAnswer(account, gelRh, gel)
            return answer && { ...answer, account, gel }
          }),
    surface:
      surfaceC === null
        ? null
        : told(accountOf(read, { surfaceTemperatureC: surfaceC }), (account) => {
            const answer = surfaceAnswer(account)
            return answer && { ...answer, account, iron: ironAt(account, surfaceC, figures) }
          }),
  }
}
