/** What the parts of an invented find look like: for each metal, sets of observations that go together. */
export interface Look {
  readonly seen?: readonly string[]
  readonly evidence?: readonly string[]
  readonly core?: string
  readonly fragility?: string
}

export interface Part {
  readonly component: string
  readonly role: string
  readonly material: string
  /** Alternatives by weight; an empty look is a part nobody looked at. */
  readonly looks: readonly (readonly [number, Look])[]
}

const nobodyLooked: readonly [number, Look] = [3, {}]

export const looks = {
  iron: [
    [5, { seen: ['orange-brown-crust'] }],
    [4, { seen: ['orange-brown-crust', 'soil-concretion'] }],
    nobodyLooked,
    [2, { seen: ['orange-brown-crust', 'black-compact-layer'], core: 'solid', fragility: 'sound' }],
    [2, { seen: ['bright-orange-spots', 'loose-flakes'], fragility: 'fragile' }],
    [1, { seen: ['orange-droplets', 'lamination-cracks'], fragility: 'fragile', core: 'partial' }],
    [1, { seen: ['dry-orange-blisters', 'powder-in-bag'], fragility: 'friable' }],
    [1, { seen: ['orange-brown-crust'], core: 'none', fragility: 'friable' }],
    [1, { seen: ['orange-brown-crust', 'loose-parts'], fragility: 'in-pieces' }],
    [
      1,
      {
        seen: ['orange-brown-crust', 'bright-orange-spots'],
        evidence: ['bright-specks-in-rust'],
        core: 'partial',
      },
    ],
  ],
  ironWet: [
    [4, { seen: ['black-compact-layer', 'blue-powder'] }],
    [3, { seen: ['soil-concretion', 'brassy-glint'] }],
    [2, { seen: ['black-compact-layer'] }],
    nobodyLooked,
    [1, { seen: ['black-layer', 'pale-yellow-bloom'] }],
  ],
  ironBurnt: [
    [3, { seen: ['red-purple-skin'] }],
    [2, { seen: ['red-purple-skin', 'black-compact-layer'], core: 'solid' }],
  ],
  copper: [
    [5, { seen: ['compact-green'] }],
    nobodyLooked,
    [2, { seen: ['compact-green', 'red-layer'], fragility: 'sound' }],
    [2, { seen: ['compact-green', 'warty-green'] }],
    [1, { seen: ['pale-green-powder', 'red-layer'], fragility: 'fragile' }],
    [1, { seen: ['pale-green-powder', 'waxy-grey-green', 'powder-in-bag'], fragility: 'friable' }],
    [1, { seen: ['compact-green', 'raised-green-along-seam'] }],
    [1, { seen: ['deep-blue-crust', 'compact-green'] }],
  ],
  copperWet: [
    [3, { seen: ['brassy-film', 'black-layer'] }],
    [3, { seen: ['black-layer'] }],
    [2, { seen: ['bare-metal'] }],
  ],
  copperBurnt: [
    [2, { seen: ['black-layer', 'red-layer'] }],
    [1, { seen: ['compact-green', 'black-crust'] }],
  ],
  lead: [
    [4, { seen: ['grey-skin'] }],
    nobodyLooked,
    [2, { seen: ['white-hard-crust'] }],
    [1, { seen: ['white-powder', 'powder-in-bag'] }],
    [1, { seen: ['grey-skin', 'red-yellow-layer'] }],
  ],
  tin: [
    [3, { seen: ['grey-skin'] }],
    [2, { seen: ['black-crust'] }],
    [1, { seen: ['grey-warts', 'grey-skin'], fragility: 'fragile' }],
    nobodyLooked,
  ],
  silver: [
    [3, { seen: ['black-tarnish'] }],
    [2, { seen: ['lavender-grey-waxy'], fragility: 'fragile' }],
    [2, { seen: ['green-on-silver', 'black-tarnish'] }],
    [1, { seen: ['brittle-cracks', 'lavender-grey-waxy'], fragility: 'fragile' }],
  ],
  gold: [
    [2, { seen: ['bare-metal'], fragility: 'sound' }],
    [1, {}],
  ],
  pegs: [
    [2, { evidence: ['white-pegs'] }],
    [1, { evidence: ['white-pegs'], fragility: 'fragile' }],
  ],
  copperInWood: [
    [2, { seen: ['pale-blue-powder', 'compact-green'] }],
    [2, { seen: ['waxy-turquoise'] }],
    [1, { seen: ['compact-green', 'loose-parts'], fragility: 'in-pieces' }],
  ],
  zincOrAluminium: [
    [2, { seen: ['white-powder'] }],
    [1, { seen: ['white-hard-crust', 'salt-bloom'] }],
    [1, {}],
  ],
  dryOrganic: [
    [2, { fragility: 'fragile' }],
    [1, { fragility: 'friable' }],
    [1, {}],
  ],
  wetOrganic: [
    [2, { fragility: 'fragile', evidence: ['wood-grain'] }],
    [1, { fragility: 'fragile' }],
  ],
  preserved: [
    [3, { evidence: ['wood-grain'], fragility: 'fragile' }],
    [2, { evidence: ['weave-pattern'], fragility: 'friable' }],
    [1, { evidence: ['leather-like-layer'], fragility: 'friable' }],
    [1, { evidence: ['fibres'] }],
  ],
  glass: [
    [2, { seen: ['iridescence'] }],
    [1, { seen: ['glass-flaking', 'iridescence'], fragility: 'fragile' }],
    [1, { seen: ['droplets-on-glass'] }],
    [1, {}],
  ],
  enamel: [
    [2, { seen: ['chalky-fill'], evidence: ['glassy-fill'] }],
    [1, { evidence: ['red-fill', 'empty-cells'] }],
  ],
  niello: [[1, { evidence: ['black-in-cut-lines'] }]],
  plain: [
    [2, {}],
    [1, { fragility: 'sound' }],
  ],
  tinned: [
    [2, { evidence: ['white-metal-sheen'] }],
    [1, { evidence: ['white-metal-sheen', 'cut-lines'] }],
  ],
  gilt: [
    [2, { evidence: ['gold-coloured-film'] }],
    [1, { evidence: ['gold-coloured-film', 'cast-relief'] }],
  ],
  decorated: [
    [2, { seen: ['compact-green'], evidence: ['openwork'] }],
    [2, { seen: ['compact-green'], evidence: ['punched-dots', 'cut-lines'] }],
    [1, { seen: ['compact-green', 'pale-green-powder'], evidence: ['cast-relief', 'black-in-recesses'] }],
    [1, { seen: ['compact-green'], evidence: ['green-stain-in-rust', 'tool-marks'] }],
  ],
  inlaid: [
    [2, { seen: ['orange-brown-crust'], evidence: ['contrasting-wire', 'bright-specks-in-rust'] }],
    [1, { seen: ['orange-brown-crust', 'soil-concretion'], evidence: ['green-stain-in-rust'] }],
  ],
} as const satisfies Record<string, readonly (readonly [number, Look])[]>

export const part = (component: string, role: string, material: string, of: keyof typeof looks): Part => ({
  component,
  role,
  material,
  looks: looks[of],
})
