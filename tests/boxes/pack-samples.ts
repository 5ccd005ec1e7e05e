import type { PackBox, PackFigures, PackFind } from '../../lib/boxes/pack-find.ts'

export const figures: PackFigures = {
  paddingMm: 10,
  unmeasuredSideMm: 40,
  looseKgPerL: 1,
  usablePart: 0.6,
  mostKg: 10,
  narrowestRhPercent: 5,
  driestRhPercent: 5,
  leakiestPerDay: 2,
}

/** A box of 10 l in a room at 40 to 60 % and 16 to 20 °C. */
export function aBox(name: string | null, also: Partial<PackBox> = {}): PackBox {
  return {
    name,
    model: 'clip-lid',
    room: 'Store',
    shelf: 'A1',
    kind: 'box',
    count: 1,
    volumeL: 10,
    insideMm: [300, 200, 170],
    maxKg: null,
    airChangesPerDay: 0.5,
    roomRhPercent: { min: 40, max: 60 },
    roomTemperatureC: { min: 16, max: 20 },
    targetRhPercent: null,
    stopped: false,
    ...also,
  }
}

/** An iron nail that wants 12 % at most. */
export function aFind(name: string, also: Partial<PackFind> = {}): PackFind {
  return {
    id: `id-${name}`,
    name,
    box: null,
    keep: 'dry',
    rhPercent: { min: 0, max: 12 },
    holdingRhPercent: null,
    temperatureC: { min: null, max: 24 },
    dark: false,
    families: ['iron'],
    apartFromMetals: false,
    apartFromOrganics: true,
    cleanAir: true,
    stopped: false,
    alone: false,
    askBeforeMoving: false,
    dryFirst: false,
    measured: { quantity: 1, massG: 20, lengthMm: 50, widthMm: 10, thicknessMm: 10 },
    rank: 3,
    ...also,
  }
}

export const copper: Partial<PackFind> = {
  families: ['copper-alloy'],
  rhPercent: { min: 0, max: 35 },
  apartFromMetals: true,
}
export const lead: Partial<PackFind> = {
  families: ['lead'],
  rhPercent: { min: 0, max: 60 },
  apartFromMetals: true,
}
export const wet: Partial<PackFind> = { keep: 'wet', rhPercent: null, temperatureC: { min: 2, max: 5 } }
export const tub: Partial<PackBox> = {
  kind: 'tub',
  model: 'lidded tub',
  room: 'Cold room',
  roomRhPercent: { min: 70, max: 90 },
  roomTemperatureC: { min: 3, max: 5 },
}

/** Kilograms that rise with the volume and with how dry the box is kept. */
export const gelFor = (box: PackBox, band: { readonly max: number }): number =>
  ((box.volumeL ?? 0) * Math.max(0, 60 - band.max)) / 1000
