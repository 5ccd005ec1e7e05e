import { gelKgForSpan } from '../climate/gel-mass.ts'
import type { Enclosure } from '../climate/enclosure.ts'
import type { Band } from '../engine/plan.ts'
import { figureValue, type Figures } from './figure-value.ts'
import type { GelFor, PackBox, PackFigures } from './pack-find.ts'

/** What the gel of a packing is weighed with; figures. */
export interface GelFigures {
  readonly days: number
  readonly reservoirGPerKgPercent: number
  /** Above this the gel goes to and fro in its loop and takes up less [%]. */
  readonly loopFromRhPercent: number
  readonly reservoirInLoopGPerKgPercent: number
  /** Of a box whose leak nobody has written [1/d]. */
  readonly airChangesPerDay: number
  /** Of a room of which nobody has written it. */
  readonly roomRhPercent: number
  readonly roomTemperatureC: number
}

export function packFiguresOf(knowledge: Figures): PackFigures {
  const value = (id: string) => figureValue(knowledge, id)
  return {
    paddingMm: value('pack-padding'),
    unmeasuredSideMm: value('pack-unmeasured-side'),
    looseKgPerL: value('pack-loose-density') / 1000,
    usablePart: value('pack-usable-part'),
    mostKg: value('pack-heaviest'),
    narrowestRhPercent: value('pack-narrowest-band'),
    driestRhPercent: value('pack-driest'),
    leakiestPerDay: value('air-exchange-plastic-box-high'),
  }
}

export function gelFiguresOf(knowledge: Figures): GelFigures {
  const value = (id: string) => figureValue(knowledge, id)
  return {
    days: value('pack-gel-days'),
    reservoirGPerKgPercent: value('gel-reservoir'),
    loopFromRhPercent: value('gel-reservoir-rh-high'),
    reservoirInLoopGPerKgPercent: value('gel-reservoir-at-half'),
    airChangesPerDay: value('air-exchange-plastic-box'),
    roomRhPercent: value('pack-room-rh'),
    roomTemperatureC: value('pack-room-temperature'),
  }
}

/**
 * Gel by the balance of water that time to the limit follows from, for the room at its worst end. A box kept dry begins as
 * dry as gel makes it; one kept in between begins in the middle, with gel conditioned to it, and must hold both ends.
 */
export function gelForPacking(
  figures: GelFigures,
  { driestRhPercent }: Pick<PackFigures, 'driestRhPercent'>,
): GelFor {
  return (box, band) => {
    const room = box.roomRhPercent ?? { min: figures.roomRhPercent, max: figures.roomRhPercent }
    const start = band.min <= driestRhPercent ? driestRhPercent : (band.min + band.max) / 2
    const enclosure = enclosureOf(box, band, figures)
    const against = (outside: number, from: number, limit: number) =>
      gelKgForSpan(enclosure, outside, from, limit, figures.days) ?? 0
    const damp = against(room.max, start, band.max)
    // Drying out is the same leak seen from the other end of the scale.
    const dry = band.min <= driestRhPercent ? 0 : against(100 - room.min, 100 - start, 100 - band.min)
    return Math.max(damp, dry)
  }
}

function enclosureOf(box: PackBox, band: Band, figures: GelFigures): Enclosure {
  const middle =
    box.roomTemperatureC === null ? NaN : (box.roomTemperatureC.min + box.roomTemperatureC.max) / 2
  const inLoop = band.max > figures.loopFromRhPercent
  return {
    volumeL: box.volumeL ?? 0,
    gelKg: 0,
    airChangesPerDay: box.airChangesPerDay ?? figures.airChangesPerDay,
    temperatureC: Number.isFinite(middle) ? middle : figures.roomTemperatureC,
    reservoirGPerKgPercent: inLoop ? figures.reservoirInLoopGPerKgPercent : figures.reservoirGPerKgPercent,
  }
}
