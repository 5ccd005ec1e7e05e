import type { HumidityAccount } from '../climate/humidity-account.ts'
import type { Convention } from '../climate/saturation.ts'

/** A line of an answer: what it is about, and what it is. */
export interface ToldRow {
  readonly name: string
  readonly text: string
}

export interface ToldPart {
  readonly title: string
  readonly rows: readonly ToldRow[]
}

/** What a row is called that says what to beware of. */
export const mindName = 'Mind'

/** `12.6`, `-6.6`, `1,455`: as many digits as a reading deserves. */
const shown = (value: number, digits: number) =>
  value.toLocaleString('en-GB', { minimumFractionDigits: digits, maximumFractionDigits: digits })

export const degreesWords = (value: number) => `${shown(value, Number.isInteger(value) ? 0 : 1)} °C`
/** Near nothing and near saturation the tenths matter. */
export const percentWords = (value: number) =>
  `${shown(value, value < 10 || Math.abs(value - 100) < 1 ? 1 : 0)} %`
/** A limit is never rounded up. */
export const percentAtMostWords = (value: number) =>
  value < 10 ? `${shown(Math.floor(value * 10) / 10, 1)} %` : `${shown(Math.floor(value), 0)} %`

export const conventionWords: Readonly<Record<Convention, string>> = {
  water:
    'Below 0 °C the relative humidity counts against liquid water, as loggers and weather stations report it.',
  'ice-below-zero': 'Below 0 °C the relative humidity counts against ice, as tables for engineers do.',
}

const dewPointWords = (dewPointC: number | null) =>
  dewPointC === null ? 'none: the air is too dry to have one' : `${degreesWords(dewPointC)}, over water`

export function readingPart(account: HumidityAccount): ToldPart {
  const { asked, frostPointC } = account
  return {
    title: `At ${degreesWords(asked.temperatureC)} and ${percentWords(asked.rhPercent)} relative humidity`,
    rows: [
      { name: 'Dew point', text: dewPointWords(account.dewPointC) },
      ...(frostPointC === null
        ? []
        : [
            {
              name: 'Frost point',
              text: `${degreesWords(frostPointC)}, over ice: frost forms before dew`,
            },
          ]),
      {
        name: 'Water in the air',
        text: `${shown(account.absoluteHumidityGPerM3, 2)} g/m³ of ${shown(account.saturationAbsoluteHumidityGPerM3, 2)} g/m³ that it could hold`,
      },
      {
        name: 'Mixing ratio',
        text: `${shown(account.mixingRatioGPerKg, 2)} g for each kilogram of dry air`,
      },
      {
        name: 'Vapour pressure',
        text: `${shown(account.vapourPressurePa, 0)} Pa of ${shown(account.saturationVapourPressurePa, 0)} Pa`,
      },
    ],
  }
}

/** What a change of temperature does, or that water comes out. */
export const changedWords = (rhPercent: number) =>
  rhPercent > 100 ? 'water comes out of the air: everything there gets wet' : percentWords(rhPercent)

/** What becomes of air without gel. */
export const emptyRows = ({
  ventedPercent,
  sealedPercent,
}: NonNullable<HumidityAccount['after']>): readonly ToldRow[] => [
  { name: 'Air that comes and goes', text: changedWords(ventedPercent) },
  { name: 'A sealed, empty box', text: changedWords(sealedPercent) },
]

export function changePart({ asked, after }: HumidityAccount): ToldPart | null {
  if (after === null || asked.toTemperatureC === null) return null
  return {
    title: `Taken to ${degreesWords(asked.toTemperatureC)}`,
    rows: [
      ...emptyRows(after),
      after.withGelPercent === null
        ? { name: 'A box with much gel', text: 'stays near the humidity of its gel' }
        : { name: 'A box with much dry gel', text: `stays near ${percentWords(after.withGelPercent)}` },
    ],
  }
}

export function surfacePart({ asked, surface }: HumidityAccount): ToldPart | null {
  if (surface === null || asked.surfaceTemperatureC === null) return null
  const { gathers, rhPercent, highestRoomRhPercent } = surface
  return {
    title: `On something at ${degreesWords(asked.surfaceTemperatureC)}`,
    rows: [
      {
        name: 'The air at its surface',
        text:
          gathers === 'none'
            ? `${percentWords(rhPercent)}: it stays dry`
            : `${gathers === 'dew' ? 'dew' : 'frost'} gathers on it (${percentWords(rhPercent)})`,
      },
      {
        name: 'How damp the room may be',
        text:
          highestRoomRhPercent > 100
            ? 'it stays dry in any air of that temperature'
            : `it stays dry while the room is below ${percentAtMostWords(highestRoomRhPercent)}`,
      },
      ...(gathers === 'none'
        ? []
        : [
            {
              name: 'What to do',
              text: 'If it is a find, leave its pack closed until it is as warm as the room.',
            },
          ]),
      {
        name: mindName,
        text: 'Metal with salts on it gets damp long before dew does: hold the air at its surface against the limit of the find.',
      },
    ],
  }
}

/** Whether anything of it lies where the convention makes a difference. */
export const freezes = ({ asked, dewPointC }: HumidityAccount): boolean =>
  [asked.temperatureC, asked.toTemperatureC, asked.surfaceTemperatureC, dewPointC].some(
    (value) => value !== null && value < 0,
  )
