/** The invented contexts of Tollgate Wharf: where on the quay, what ground, how wet things come up, which centuries. */
export interface Ground {
  readonly contexts: readonly string[]
  readonly burial: readonly string[]
  readonly wetness: 'wet' | 'damp' | 'dry'
  readonly period: string
  readonly years: readonly [number, number]
  readonly weight: number
  readonly ph: readonly [number, number]
  readonly chloride: readonly [number, number]
}

export const grounds = {
  'old foreshore': {
    contexts: ['1004', '1007', '1012', '1015'],
    burial: ['waterlogged', 'organic-urban', 'intertidal'],
    wetness: 'wet',
    period: '12th–13th century',
    years: [1150, 1300],
    weight: 8,
    ph: [6.4, 7.4],
    chloride: [60, 400],
  },
  'timber revetment': {
    contexts: ['1021', '1022', '1026'],
    burial: ['waterlogged', 'freshwater', 'clay'],
    wetness: 'wet',
    period: '14th century',
    years: [1300, 1400],
    weight: 7,
    ph: [6.2, 7.1],
    chloride: [30, 120],
  },
  'peat below the bank': {
    contexts: ['1031', '1033'],
    burial: ['waterlogged', 'peat'],
    wetness: 'wet',
    period: 'before the quay',
    years: [900, 1150],
    weight: 2,
    ph: [4.2, 5.4],
    chloride: [10, 40],
  },
  'quay surface': {
    contexts: ['1101', '1104', '1108', '1113', '1119'],
    burial: ['damp', 'organic-urban'],
    wetness: 'damp',
    period: '15th–16th century',
    years: [1400, 1600],
    weight: 22,
    ph: [6.6, 7.8],
    chloride: [40, 200],
  },
  'cess pit behind the toll house': {
    contexts: ['1142', '1143'],
    burial: ['damp', 'cess', 'organic-urban'],
    wetness: 'damp',
    period: '16th century',
    years: [1500, 1600],
    weight: 5,
    ph: [6.5, 7.6],
    chloride: [80, 300],
  },
  'burnt warehouse': {
    contexts: ['1161', '1164'],
    burial: ['ash-burnt', 'damp'],
    wetness: 'dry',
    period: '17th century',
    years: [1600, 1700],
    weight: 8,
    ph: [7.6, 9.1],
    chloride: [20, 90],
  },
  'chapel ground': {
    contexts: ['1201', '1207', '1211'],
    burial: ['grave', 'calcareous', 'free-draining'],
    wetness: 'dry',
    period: '13th–15th century',
    years: [1200, 1500],
    weight: 8,
    ph: [7.2, 8.3],
    chloride: [10, 40],
  },
  'sandy terrace': {
    contexts: ['1301', '1304'],
    burial: ['acid-sand', 'free-draining'],
    wetness: 'dry',
    period: '12th–14th century',
    years: [1100, 1400],
    weight: 7,
    ph: [4.3, 5.6],
    chloride: [5, 25],
  },
  'plough strip above the wharf': {
    contexts: ['1320'],
    burial: ['ploughsoil', 'free-draining'],
    wetness: 'dry',
    period: 'mixed',
    years: [1200, 1900],
    weight: 9,
    ph: [5.6, 6.9],
    chloride: [15, 120],
  },
  'salt cellar floor': {
    contexts: ['1341'],
    burial: ['saline', 'damp', 'clay'],
    wetness: 'damp',
    period: '17th–18th century',
    years: [1650, 1800],
    weight: 5,
    ph: [6.8, 7.9],
    chloride: [900, 4200],
  },
  'dredged from the bar': {
    contexts: ['1401', '1402'],
    burial: ['marine'],
    wetness: 'wet',
    period: '16th–18th century',
    years: [1500, 1800],
    weight: 5,
    ph: [7.6, 8.2],
    chloride: [3000, 19000],
  },
  'coal yard': {
    contexts: ['1501', '1503', '1507'],
    burial: ['industrial', 'damp', 'ash-burnt'],
    wetness: 'damp',
    period: '19th–20th century',
    years: [1820, 1950],
    weight: 9,
    ph: [4.9, 8.0],
    chloride: [60, 500],
  },
  'dry vault under the toll house': {
    contexts: ['1521'],
    burial: ['dry'],
    wetness: 'dry',
    period: '18th–19th century',
    years: [1700, 1900],
    weight: 5,
    ph: [6.9, 7.8],
    chloride: [10, 60],
  },
} as const satisfies Record<string, Ground>

export type GroundName = keyof typeof grounds
