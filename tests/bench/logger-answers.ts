/** What is asked of the readings by every peer, and what each must answer alike. */
export const asked = {
  band: { minRhPercent: 45, maxRhPercent: 55 },
  excursionRhPercent: 60,
  excursionHours: 24,
  longestStepMs: 3_600_000,
  windowMs: 86_400_000,
  percentiles: [7, 93],
} as const

export interface Answers {
  readonly readings: number
  /** Of the time with readings; a step of more than an hour is no time. */
  readonly shareInBand: number
  readonly longExcursions: number
  readonly highestDayRhPercent: number
  readonly percentiles: readonly number[]
  readonly months: readonly MonthAnswer[]
}

export interface MonthAnswer {
  readonly month: string
  readonly readings: number
  readonly rhPercent: Three
  readonly temperatureC: Three
}

interface Three {
  readonly mean: number
  readonly min: number
  readonly max: number
}

/** What one run took. */
export interface Ran {
  readonly seconds: number
  /** Time of the processor, on all threads: what the clock says depends on who else is at work. */
  readonly cpuSeconds: number
  readonly peakMegabytes: number
}

/** Both clocks from here on. */
export function clocks(): () => Pick<Ran, 'seconds' | 'cpuSeconds'> {
  const [wall, cpu] = [performance.now(), process.cpuUsage()]
  return () => {
    const { user, system } = process.cpuUsage(cpu)
    return { seconds: (performance.now() - wall) / 1000, cpuSeconds: (user + system) / 1e6 }
  }
}

export const peakMegabytes = () => process.resourceUsage().maxRSS / 1024

/** Means differ where one adds single and another double floats; all else is the same number. */
const near = (a: number, b: number) => Math.abs(a - b) < 1e-5

/** What two answers disagree about, in words; empty where they agree. */
export function disagreements(a: Answers, b: Answers): readonly string[] {
  const told: string[] = []
  const same = (what: string, one: number, other: number) => {
    if (!near(one, other)) told.push(`${what}: ${one} and ${other}`)
  }
  same('readings', a.readings, b.readings)
  same('share in band', a.shareInBand, b.shareInBand)
  same('long excursions', a.longExcursions, b.longExcursions)
  same('highest day', a.highestDayRhPercent, b.highestDayRhPercent)
  a.percentiles.forEach((value, at) => same(`percentile ${at}`, value, b.percentiles[at] ?? Number.NaN))
  same('months', a.months.length, b.months.length)
  a.months.forEach((month, at) => {
    const other = b.months[at]
    if (other === undefined || month.month !== other.month) {
      told.push(`month ${month.month}`)
      return
    }
    same(`${month.month} readings`, month.readings, other.readings)
    for (const key of ['mean', 'min', 'max'] as const) {
      same(`${month.month} humidity ${key}`, month.rhPercent[key], other.rhPercent[key])
      same(`${month.month} temperature ${key}`, month.temperatureC[key], other.temperatureC[key])
    }
  })
  return told
}
