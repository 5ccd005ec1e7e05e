import type { OutOfValidity } from '../climate/out-of-validity.ts'
import type { WarmUpAccount } from '../climate/warm-up-account.ts'
import type { ToldAnswer } from './climate-room.ts'
import { degreesWords, percentWords, type ToldRow } from './humidity-parts.ts'
import { outOfValidityWords } from './humidity.ts'
import { waitRangeWords, waitWords } from './span-of-time.ts'

/** The room it comes into, and the driest of the humidities published for iron with chloride. */
export interface ComesInto {
  readonly rhPercent: number
  readonly ironCeilingPercent: number
}

function headline({ asked, clear, warm }: WarmUpAccount): string {
  const { startC, roomC, brought } = asked
  if (clear.high === Number.POSITIVE_INFINITY)
    return 'In this room it never comes clear of the water: the air itself is full.'
  if (startC >= roomC) return 'It comes in as warm as the room or warmer: nothing gathers on it.'
  if (brought.kind === 'pack') return `Leave the pack closed for at least ${waitWords(warm.high)}.`
  return clear.high === 0
    ? 'Nothing gathers on it, even as cold as it comes.'
    : `Bare, it stays wet for up to ${waitWords(clear.high)}: bring it in closed, and leave it closed.`
}

function clearText({ clear }: WarmUpAccount): string {
  if (clear.high === Number.POSITIVE_INFINITY) return 'never in this room'
  return clear.high === 0 ? 'at once: it is above that already' : waitRangeWords(clear)
}

function ironRow({ rhPercent, ironCeilingPercent }: ComesInto): ToldRow {
  const ceiling = percentWords(ironCeilingPercent)
  return {
    name: 'Iron that may hold chloride',
    text:
      rhPercent > ironCeilingPercent
        ? `this room is at ${percentWords(rhPercent)}, over ${ceiling}: warm or cold, it stays in its dry pack`
        : `this room is at ${percentWords(rhPercent)}, under ${ceiling} once the find is as warm as the room`,
  }
}

/** How long something cold stays wet, and how long until it is as warm as the room. */
export function warmAnswer(account: WarmUpAccount, into: ComesInto): ToldAnswer {
  const { wetAtC, brought } = account.asked
  const where = wetAtC === null ? '' : `, above ${degreesWords(wetAtC)}`
  return {
    headline: headline(account),
    rows: [
      { name: `Until nothing gathers on it${where}`, text: clearText(account) },
      { name: 'Until it is within a degree of the room', text: waitRangeWords(account.warm) },
      ironRow(into),
    ],
    lines: [
      brought.kind === 'pack'
        ? 'Reckoned for still air around the pack on all sides. Boxes stacked against each other take longer; a logger or a thermometer in the pack tells it better than any reckoning.'
        : 'Reckoned for a plate with air on both sides. Soil, corrosion crusts and wood on it make it slower.',
    ],
  }
}

const millimetres = (metres: number) =>
  (metres * 1000).toLocaleString('en-GB', { maximumSignificantDigits: 3 })

/** Why no time can be told. */
export function warmRefusalWords(refusal: OutOfValidity): string {
  switch (refusal.quantity) {
    case 'thicknessM':
      return refusal.value > 0
        ? `Thicker than ${millimetres(refusal.to)} mm its middle lags behind its faces, and one time tells little. Leave it closed overnight at the least.`
        : 'A plate must be thicker than nothing.'
    case 'heatJPerK':
      return 'Something must be in the pack: write how much metal and packing it holds.'
    case 'outsideM2':
      return 'A pack must have an outside: write its length, width and height.'
    case 'startC':
      return outOfValidityWords({ ...refusal, quantity: 'temperatureC' })
    default:
      return outOfValidityWords(refusal)
  }
}
