import type { GroundName } from './grounds.ts'
import type { Kind } from './kind.ts'
import { part } from './parts.ts'

const wet: readonly GroundName[] = ['old foreshore', 'timber revetment', 'peat below the bank']
const sea: readonly GroundName[] = ['dredged from the bar']

export const wetAndMarine: readonly Kind[] = [
  {
    weight: 12,
    object: 'knife in wooden handle',
    kind: 'knife',
    only: wet,
    parts: [part('blade', 'body', 'iron', 'ironWet'), part('handle', 'handle', 'wood', 'wetOrganic')],
    mass: [30, 120],
  },
  {
    weight: 8,
    object: 'sheath with chape',
    kind: 'strap-fitting',
    only: wet,
    parts: [
      part('chape', 'body', 'copper-alloy', 'copperWet'),
      part('sheath', 'backing', 'leather', 'wetOrganic'),
    ],
    mass: [20, 90],
    more: { lifted_as: 'block' },
  },
  {
    weight: 8,
    object: 'nail in timber',
    kind: 'nail',
    only: wet,
    parts: [part('nail', 'body', 'iron', 'ironWet'), part('timber', 'adhering', 'wood', 'wetOrganic')],
    mass: [60, 700],
  },
  {
    weight: 5,
    object: 'pewter plate',
    kind: 'vessel',
    only: wet,
    parts: [part('body', 'body', 'pewter', 'tin')],
    mass: [120, 500],
  },
  {
    weight: 4,
    object: 'buckle, bright',
    kind: 'buckle',
    only: wet,
    parts: [part('body', 'body', 'copper-alloy', 'copperWet')],
    mass: [4, 20],
  },
  {
    weight: 3,
    object: 'purse frame with cloth',
    kind: 'mount',
    only: wet,
    parts: [part('frame', 'body', 'iron', 'ironWet'), part('cloth', 'adhering', 'textile', 'wetOrganic')],
    mass: [40, 160],
    more: { lifted_as: 'block' },
  },
  {
    weight: 10,
    object: 'concretion',
    kind: 'unidentified-lump',
    only: sea,
    parts: [part('body', 'body', 'iron', 'iron')],
    mass: [200, 4000],
  },
  {
    weight: 6,
    object: 'iron shot',
    kind: 'shot',
    only: sea,
    parts: [part('body', 'body', 'cast-iron', 'ironWet')],
    mass: [900, 4000],
    notes: 'round shot, bored?',
  },
  {
    weight: 6,
    object: 'pewter tankard',
    kind: 'vessel',
    only: sea,
    parts: [part('body', 'body', 'pewter', 'tin')],
    mass: [200, 700],
  },
  {
    weight: 4,
    object: 'block with rope',
    kind: 'tool',
    only: sea,
    parts: [
      part('pin', 'pin', 'iron', 'ironWet'),
      part('shell of block', 'body', 'wood', 'wetOrganic'),
      part('rope', 'adhering', 'organic-unidentified', 'wetOrganic'),
    ],
    mass: [300, 1800],
  },
]
