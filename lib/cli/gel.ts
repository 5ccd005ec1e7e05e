import { reckonGel, type GelReckoning, type Told } from '../services/reckon-gel.ts'
import { gelText } from '../wording/gel.ts'
import { exit, textOption, WrongCall, type Call, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { numberOptions } from './number-options.ts'

const percent = { from: 0, to: 100, unit: '%' } as const
const perDay = { from: 0, to: 1000, unit: 'a day' } as const
const reservoir = { from: 0.1, to: 50, unit: 'g/(kg·%)' } as const

const wanted = {
  'volume-l': { from: 0.01, to: 1_000_000, unit: 'l', required: true },
  'air-changes-per-day': { ...perDay, required: true },
  'air-changes-low-per-day': perDay,
  'air-changes-high-per-day': perDay,
  'outside-rh-percent': { ...percent, required: true },
  'outside-rh-low-percent': percent,
  'outside-rh-high-percent': percent,
  'outside-swing-rh-percent': { from: 0, to: 50, unit: '%' },
  'dampest-in-days': { from: 0, to: 366, unit: 'days' },
  'start-rh-percent': { ...percent, required: true },
  'limit-rh-percent': { ...percent, required: true },
  'temperature-c': { from: 0, to: 40, unit: '°C' },
  'reservoir-g-per-kg-percent': reservoir,
  'reservoir-low-g-per-kg-percent': reservoir,
  'reservoir-high-g-per-kg-percent': reservoir,
  'film-g-per-m2-day': { from: 0, to: 10_000, unit: 'g/(m²·day)' },
  'film-area-m2': { from: 0, to: 10_000, unit: 'm²' },
  'gel-kg': { from: 0, to: 100_000, unit: 'kg' },
  days: { from: 1, to: 36_525, unit: 'days' },
} as const

type Name = keyof typeof wanted
type Values = Readonly<Record<Name, number | null>>

const ranged = [
  ['air-changes-per-day', 'air-changes-low-per-day', 'air-changes-high-per-day'],
  ['outside-rh-percent', 'outside-rh-low-percent', 'outside-rh-high-percent'],
  ['reservoir-g-per-kg-percent', 'reservoir-low-g-per-kg-percent', 'reservoir-high-g-per-kg-percent'],
] as const satisfies readonly (readonly [Name, Name, Name])[]

/** What is wrong between options that are each right by themselves. */
function wrongTogether(values: Values, given: (name: Name) => boolean): string[] {
  const wrong = ranged.flatMap(([middle, low, high]) => [
    ...(exceeds(values[low], values[middle])
      ? [`--${low} lies above --${middle}; it is the low end of its range.`]
      : []),
    ...(exceeds(values[middle], values[high])
      ? [`--${high} lies below --${middle}; it is the high end of its range.`]
      : []),
    ...(!given(middle) &&
    (given(low) || given(high)) &&
    middle !== 'air-changes-per-day' &&
    middle !== 'outside-rh-percent'
      ? [`--${middle} is missing: a range needs its middle.`]
      : []),
  ])
  for (const [one, other] of [
    ['outside-swing-rh-percent', 'dampest-in-days'],
    ['film-g-per-m2-day', 'film-area-m2'],
  ] as const satisfies readonly (readonly [Name, Name])[])
    if (given(one) !== given(other))
      wrong.push(`--${one} and --${other} belong together; --${given(one) ? other : one} is missing.`)
  if (!given('gel-kg') && !given('days'))
    wrong.push('Give --gel-kg to learn how long it lasts, or --days to learn how much gel is needed.')
  return wrong
}

const exceeds = (one: number | null, other: number | null) => one !== null && other !== null && one > other

/** `Infinity` has no place in JSON: never, and no amount of gel, are null. */
const finite = (value: number | null) => (value === null || !Number.isFinite(value) ? null : value)

const spread = (quantiles: GelReckoning['daysToLimit']) =>
  quantiles && {
    p10: finite(quantiles.p10),
    p50: finite(quantiles.p50),
    p90: finite(quantiles.p90),
    nominal: finite(quantiles.nominal),
  }

/** The keys of the contract; each says its unit. */
function asJson(told: GelReckoning): object {
  const { asked, byIsotherm } = told
  return {
    volumeL: asked.volumeL,
    temperatureC: asked.temperatureC,
    airChangesPerDay: told.airChangesPerDay,
    ...(asked.film && { wallAirChangesPerDay: told.wallAirChangesPerDay }),
    outsideRhPercent: told.outsideRhPercent,
    ...(asked.season && {
      outsideSwingRhPercent: asked.season.swingRhPercent,
      dampestInDays: asked.season.dampestInDays,
    }),
    startRhPercent: told.startRhPercent,
    limitRhPercent: asked.limitRhPercent,
    limit: told.state,
    ...(told.daysToLimit && {
      gelKgGiven: asked.gelKg,
      timeConstantDays: finite(told.timeConstantDays),
      daysToLimit: spread(told.daysToLimit),
    }),
    ...(told.gelKg && { days: asked.days, gelKg: spread(told.gelKg) }),
    isotherm: {
      id: 'straight',
      reservoirGPerKgPercent: told.reservoir.gPerKgPercent,
      source: told.reservoir.source ?? 'given',
    },
    ...(byIsotherm && {
      byBentIsotherm: {
        id: byIsotherm.isotherm,
        reservoirGPerKgPercent: byIsotherm.reservoirGPerKgPercent,
        daysToLimit: byIsotherm.daysToLimit,
        source: byIsotherm.source,
      },
    }),
    cautions: told.cautions,
  }
}

function formatOf(call: Call, wrong: string[]): 'text' | 'json' {
  const given = textOption(call, 'format') ?? 'text'
  if (given !== 'text' && given !== 'json') wrong.push(`--format is one of text, json, not "${given}".`)
  return given === 'json' ? 'json' : 'text'
}

export const command: Command = {
  usage:
    'gel --volume-l NUMBER --air-changes-per-day NUMBER --outside-rh-percent NUMBER --start-rh-percent NUMBER --limit-rh-percent NUMBER (--gel-kg NUMBER | --days NUMBER) [--temperature-c NUMBER] [--format text|json]',
  says: 'How long dry gel keeps a box below its limit, or how much gel a span of days needs.',
  help: `
--volume-l, --air-changes-per-day  the box, and how often its air is renewed through the lid
--outside-rh-percent               the room; its mean where it follows the seasons
--start-rh-percent                 what the box begins at; gel fresh from the oven is about 5
--limit-rh-percent                 the highest its contents bear
--gel-kg                           dry gel in it: how long it lasts
--days                             or a span: how much dry gel it needs
--temperature-c                    20 where left out

What is known better than by one figure can be given as a range, within which it lies in eight cases of ten:
--air-changes-low-per-day, --air-changes-high-per-day
--outside-rh-low-percent, --outside-rh-high-percent
--reservoir-g-per-kg-percent, --reservoir-low-g-per-kg-percent, --reservoir-high-g-per-kg-percent

--outside-swing-rh-percent, --dampest-in-days   a room that goes up and down with the year
--film-g-per-m2-day, --film-area-m2             a box or bag of film, by the maker's figure at 38 °C and 90 %

null is never, or no amount of gel. Exit code 0: answered. 2: the call is wrong; every wrong value is named.`,
  options: Object.fromEntries(
    [...Object.keys(wanted), 'format'].map((name) => [name, { type: 'string' as const }]),
  ),
  async run(call, surroundings) {
    const { values, wrong: wrongNumbers } = numberOptions(call, wanted)
    const given = (name: Name) => textOption(call, name) !== null
    const wrong = [...wrongNumbers, ...wrongTogether(values, given)]
    const format = formatOf(call, wrong)
    if (call.words.length > 0) wrong.push(`"${call.words.join(' ')}" belongs to no option.`)
    if (wrong.length > 0) throw new WrongCall(wrong.join('\n'))
    const told = ([middle, low, high]: (typeof ranged)[number]): Told => ({
      nominal: values[middle]!,
      low: values[low],
      high: values[high],
    })
    const knowledge = await knowledgeHere(surroundings)
    const reckoned = reckonGel(
      {
        volumeL: values['volume-l']!,
        airChangesPerDay: told(ranged[0]),
        film:
          values['film-g-per-m2-day'] === null
            ? null
            : { gPerM2Day: values['film-g-per-m2-day'], areaM2: values['film-area-m2']! },
        outsideRhPercent: told(ranged[1]),
        season:
          values['outside-swing-rh-percent'] === null
            ? null
            : {
                swingRhPercent: values['outside-swing-rh-percent'],
                dampestInDays: values['dampest-in-days']!,
              },
        startRhPercent: values['start-rh-percent']!,
        limitRhPercent: values['limit-rh-percent']!,
        temperatureC: values['temperature-c'] ?? 20,
        reservoirGPerKgPercent: values['reservoir-g-per-kg-percent'] === null ? null : told(ranged[2]),
        gelKg: values['gel-kg'],
        days: values.days,
      },
      knowledge,
    )
    await surroundings.out(
      format === 'json' ? `${JSON.stringify(asJson(reckoned))}\n` : `${gelText(reckoned, knowledge)}\n`,
    )
    return exit.done
  },
}
