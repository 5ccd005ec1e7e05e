import type { ValueNames } from './names.ts'

/**
 * Abbreviations and looser words of the trade. They are taken, but as a guess that is said aloud: on a coin list `AE` is
 * copper alloy, and `Cu` seldom means pure copper.
 */
export const shortNames: ValueNames = {
  material: {
    iron: ['Fe', 'Fe alloy', 'ferrous', 'wrought iron', 'iron alloy'],
    'copper-alloy': ['Cu', 'Cu alloy', 'CuA', 'AE', 'copper alloys', 'bronze or brass'],
    lead: ['Pb', 'Pb alloy', 'lead alloy'],
    tin: ['Sn', 'Sn alloy', 'tin alloy'],
    silver: ['Ag', 'AR', 'Ag alloy', 'silver alloy'],
    gold: ['Au', 'AV', 'Au alloy', 'gold alloy'],
    zinc: ['Zn', 'Zn alloy'],
    aluminium: ['Al', 'Al alloy', 'aluminum'],
    magnesium: ['Mg', 'Mg alloy'],
    'nickel-alloy': ['Ni', 'Ni alloy', 'nickel'],
    'white-metal': ['white metal alloy'],
    'metal-unidentified': [
      'metal',
      'unidentified metal',
      'unknown metal',
      'metal unknown',
      'non-ferrous',
      'nonferrous',
    ],
    'organic-unidentified': ['organic', 'unidentified organic', 'organics'],
    'mineral-preserved-organic': ['MPO', 'mineralised organic', 'mineralized organic'],
    textile: ['cloth', 'fabric'],
    ceramic: ['pottery', 'pot', 'fired clay'],
    plastic: ['polymer', 'plastics'],
  },
  wet_when_lifted: { yes: ['y', 'true', '1'], no: ['n', 'false', '0'] },
}

export const unknownWords: readonly string[] = [
  'not known',
  'unkn',
  'unk',
  'uncertain',
  'cannot tell',
  'can’t tell',
  "can't tell",
  'not sure',
  'do not know',
]
