import type { Beyond } from '../logger/beyond.ts'
import type { Excursion } from '../logger/excursions.ts'
import type { Extremes } from '../logger/rolling.ts'
import type { LogTold } from '../services/tell-log.ts'

const hourMs = 3_600_000
/** Means of hundredths need no more. */
const fine = (value: number) => Math.round(value * 1e6) / 1e6
const orNull = (value: number | null | undefined) =>
  value === null || value === undefined ? null : fine(value)
const moment = (ms: number | null) => (ms === null ? null : new Date(ms).toISOString().replace('.000Z', 'Z'))

/** The keys of the contract, and ours beside them; each says its unit. */
export function channelJson(told: LogTold): object {
  const { statistics, floor, error } = told
  const { humidity, temperatureC, moisture } = statistics
  return {
    readings: statistics.readings,
    from: moment(statistics.fromMs),
    to: moment(statistics.toMs),
    intervalMinutes: fine(statistics.intervalMs / 60_000),
    coveragePercent: fine(statistics.coveragePercent),
    gaps: statistics.gaps.map(({ fromMs, toMs }) => ({
      from: moment(fromMs),
      to: moment(toMs),
      hours: fine((toMs - fromMs) / hourMs),
    })),
    flatFloor: floor && {
      atRhPercent: floor.atRhPercent,
      readings: floor.readings,
      percentOfReadings: fine(100 * floor.share),
      knownFrom: floor.from === 'register' ? 'given' : 'readings',
    },
    limitRhPercent: humidity?.above?.limitRhPercent ?? null,
    percentTimeAbove: orNull(humidity?.above?.percentOfTime),
    hoursAbove: orNull(humidity?.above?.hours),
    doseRhPercentHours: orNull(humidity?.above?.doseRhPercentHours),
    doseMethod: humidity?.doseMethod ?? null,
    ...(humidity?.above ? { above: beyondJson(humidity.above) } : {}),
    ...(humidity?.below
      ? { percentTimeBelow: fine(humidity.below.percentOfTime), below: beyondJson(humidity.below) }
      : {}),
    percentTimeWithin: orNull(humidity?.percentOfTimeIn),
    sensorErrorRhPercent: error.rhPercent,
    verdict: told.verdict,
    chanceOverLimit: told.overLimit && chanceJson(told.overLimit),
    ...(told.underLimit ? { chanceUnderLimit: chanceJson(told.underLimit) } : {}),
    excursions: told.excursions.map(excursionJson),
    meanRhPercent: orNull(humidity?.mean),
    meanIsAtMost: humidity?.atMost ?? false,
    minRhPercent: orNull(humidity?.min),
    maxRhPercent: orNull(humidity?.max),
    sdPopulationRhPercent: orNull(humidity?.sdPopulation),
    sdSampleRhPercent: orNull(humidity?.sdSample),
    percentiles:
      humidity &&
      Object.fromEntries(
        humidity.percentiles.map(({ percent, rhPercent }) => [`p${percent}`, fine(rhPercent)]),
      ),
    percentMethod: humidity?.percentileMethod ?? null,
    worstRolling24hPercent: orNull(humidity?.day?.highest.rhPercent),
    lowestRolling24hPercent: orNull(humidity?.day?.lowest.rhPercent),
    worstRolling24h: humidity?.day ? windowJson(humidity.day) : null,
    worstRolling30dPercent: orNull(humidity?.thirtyDays?.highest.rhPercent),
    greatestChange24h: humidity?.greatestChange
      ? {
          fromRhPercent: humidity.greatestChange.fromRhPercent,
          toRhPercent: humidity.greatestChange.toRhPercent,
          from: moment(humidity.greatestChange.fromMs),
          to: moment(humidity.greatestChange.toMs),
        }
      : null,
    meanTemperatureC: orNull(temperatureC?.mean),
    minTemperatureC: orNull(temperatureC?.min),
    maxTemperatureC: orNull(temperatureC?.max),
    absoluteHumidityGPerM3: moisture && rounded(moisture.absoluteHumidityGPerM3),
    dewPointC: moisture && rounded(moisture.dewPointC),
    frostPointC: moisture && rounded(moisture.frostPointC),
    months: statistics.months.map(({ month, rhPercent, temperatureC: celsius }) => ({
      month,
      readings: rhPercent?.readings ?? 0,
      meanRhPercent: orNull(rhPercent?.mean),
      minRhPercent: orNull(rhPercent?.min),
      maxRhPercent: orNull(rhPercent?.max),
      meanTemperatureC: orNull(celsius?.mean),
      minTemperatureC: orNull(celsius?.min),
      maxTemperatureC: orNull(celsius?.max),
    })),
    seasonal: told.seasonal.ok ? seasonalJson(told.seasonal.value) : null,
    ...(told.seasonal.ok ? {} : { seasonalMissing: told.seasonal.problems }),
    roundedReadings: statistics.rounded,
    implausibleReadings: statistics.implausible,
  }
}

const rounded = <Key extends string>(values: Readonly<Record<Key, number | null>>) =>
  Object.fromEntries(Object.entries<number | null>(values).map(([key, value]) => [key, orNull(value)]))

const chanceJson = ({ readRhPercent, limitRhPercent, chance }: NonNullable<LogTold['overLimit']>) => ({
  readRhPercent,
  limitRhPercent,
  chancePercent: fine(100 * chance),
})

function beyondJson(beyond: Beyond): object {
  return {
    limitRhPercent: beyond.limitRhPercent,
    hours: fine(beyond.hours),
    percentOfTime: fine(beyond.percentOfTime),
    doseRhPercentHours: fine(beyond.doseRhPercentHours),
    meanBeyondRhPercent: orNull(beyond.meanBeyondRhPercent),
    excursions: beyond.excursions,
    longestHours: orNull(beyond.longest?.hours),
    hoursWithSensorError: {
      least: fine(beyond.hoursWithError.least),
      most: fine(beyond.hoursWithError.most),
    },
    hoursCannotTell: fine(beyond.hoursCannotTell),
  }
}

function excursionJson(one: Excursion): object {
  return {
    kind: one.kind,
    from: moment(one.fromMs),
    to: moment(one.toMs),
    hours: fine((one.toMs - one.fromMs) / hourMs),
    limitRhPercent: one.limitRhPercent,
    worstRhPercent: one.worstRhPercent,
    worstAt: moment(one.worstAtMs),
    doseRhPercentHours: fine(one.doseRhPercentHours),
    readings: one.readings,
    chanceRealPercent: fine(100 * one.chanceReal),
    brokenOff: one.brokenOff,
  }
}

const windowJson = ({ highest }: Extremes) => ({
  meanRhPercent: fine(highest.rhPercent),
  from: moment(highest.fromMs),
  to: moment(highest.toMs),
})

function seasonalJson(band: Extract<LogTold['seasonal'], { ok: true }>['value']): object {
  return {
    for: band.for,
    readings: band.readings,
    lowRhPercent: fine(band.lowRhPercent),
    highRhPercent: fine(band.highRhPercent),
    widened: {
      lowRhPercent: fine(band.widened.lowRhPercent),
      highRhPercent: fine(band.widened.highRhPercent),
      changes: band.widened.changes,
    },
    percentOutside: fine(band.percentOutside),
    percentMethod: band.percentileMethod,
  }
}
