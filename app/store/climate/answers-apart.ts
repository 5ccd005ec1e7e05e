import { correctionBySources } from '../../../lib/climate/fixed-points-sources.ts'
import type { SaltReading } from '../../../lib/climate/fixed-points-correction.ts'
import { humidityAccount } from '../../../lib/climate/humidity-account.ts'
import { standardPressurePa } from '../../../lib/climate/humidity.ts'
import { warmUpAccount, type Brought } from '../../../lib/climate/warm-up-account.ts'
import { saltsAnswer } from '../../../lib/wording/climate-salts.ts'
import { warmAnswer, warmRefusalWords } from '../../../lib/wording/climate-warm.ts'
import { correctionRefusalWords } from '../../../lib/wording/humidity-salts.ts'
import { outOfValidityWords } from '../../../lib/wording/humidity.ts'
import type { Answered } from './answers.ts'
import { figureOf, ironIds, metalIds, type PageFigures } from './figures.ts'
import type { ReadTyped } from './read-typed.ts'

/** The plate or the pack that is described; null where something of it is not written. */
function broughtOf({ numbers, choices }: ReadTyped, figures: PageFigures): Brought | null {
  const { thicknessMm, lengthCm, widthCm, heightCm, paddingMm, metalKg, packingKg } = numbers
  const value = (id: string) => figureOf(figures, id).value
  const [density, capacity, conductivity] = metalIds[choices.metal]
  if (choices.brought === 'plate')
    return thicknessMm === null
      ? null
      : {
          kind: 'plate',
          plate: {
            thicknessM: thicknessMm / 1000,
            densityKgPerM3: value(density) * 1000,
            heatCapacityJPerKgK: value(capacity),
            conductivityWPerMK: value(conductivity),
          },
        }
  if (lengthCm === null || widthCm === null || heightCm === null) return null
  if (paddingMm === null || metalKg === null || packingKg === null) return null
  return {
    kind: 'pack',
    heatJPerK: metalKg * value(capacity) + packingKg * value('heat-capacity-packing'),
    outsideM2: (2 * (lengthCm * widthCm + lengthCm * heightCm + widthCm * heightCm)) / 10_000,
    wallResistanceM2KPerW: paddingMm / 1000 / value('padding-conductivity'),
  }
}

/** How long something cold stays wet in this room, and how long until it is as warm. */
export function warmOf(read: ReadTyped, figures: PageFigures): Answered {
  const { roomC, roomRh, startC } = read.numbers
  const brought = broughtOf(read, figures)
  if (brought === null || roomC === null || roomRh === null || startC === null) return null
  const room = humidityAccount({
    temperatureC: roomC,
    rhPercent: roomRh,
    convention: read.choices.convention,
    airPressurePa: standardPressurePa,
    toTemperatureC: null,
    surfaceTemperatureC: null,
  })
  if (!room.ok) return { refused: room.problems.map(outOfValidityWords) }
  const account = warmUpAccount({
    brought,
    startC,
    roomC,
    wetAtC: room.value.frostPointC ?? room.value.dewPointC,
    airResistanceM2KPerW: {
      low: figureOf(figures, 'surface-resistance-low').value,
      high: figureOf(figures, 'surface-resistance-high').value,
    },
  })
  if (!account.ok) return { refused: account.problems.map(warmRefusalWords) }
  return warmAnswer(account.value, {
    rhPercent: roomRh,
    ironCeilingPercent: Math.min(...ironIds.map((id) => figureOf(figures, id).value)),
  })
}

/** What a logger that stood over salts really reads. */
export function saltsOf({ numbers, choices }: ReadTyped, figures: PageFigures): Answered {
  const { saltC, firstRead, secondRead, nowRead } = numbers
  const { firstSalt, secondSalt } = choices
  if (saltC === null || firstRead === null || nowRead === null) return null
  if (secondSalt !== 'none' && secondRead === null) return null
  const readings: SaltReading[] = [
    { salt: firstSalt, temperatureC: saltC, readRhPercent: firstRead },
    ...(secondSalt === 'none'
      ? []
      : [{ salt: secondSalt, temperatureC: saltC, readRhPercent: secondRead ?? 0 }]),
  ]
  const found = correctionBySources(readings)
  if (!found.ok) return { refused: found.problems.map(correctionRefusalWords) }
  return saltsAnswer(found.value, nowRead, {
    hysteresisPercent: figureOf(figures, 'logger-hysteresis').value,
    driftAYearPercent: figureOf(figures, 'logger-drift-a-year').value,
  })
}
