import type { Drawings } from './kit/drawn.ts'

/** Drawings that come together: what one question shows is always on one sheet. */
interface Sheet {
  /** Fields of the record and questions, each drawn wholly: every value it has. */
  readonly draws: readonly string[]
  readonly load: () => Promise<Drawings>
}

/** Each sheet is fetched when a question first shows it: nobody waits for all drawings to see a few. */
export const sheets: readonly Sheet[] = [
  { draws: ['seen'], load: async () => (await import('./seen.ts')).seen },
  { draws: ['evidence'], load: async () => (await import('./evidence.ts')).evidence },
  {
    draws: ['magnet', 'original_surface', 'core', 'radiograph', 'extent'],
    load: async () => (await import('./record.tsx')).record,
  },
  {
    draws: ['fragility', 'completeness'],
    load: async () => (await import('./handling.tsx')).handling,
  },
  {
    draws: ['black-sits', 'black-spread', 'black-look'],
    load: async () => (await import('./questions/black-fills.tsx')).blackFills,
  },
  {
    draws: ['black-layer-place', 'black-layer-edge', 'fire-signs', 'tarnish-look'],
    load: async () => (await import('./questions/black-layers.tsx')).blackLayers,
  },
  {
    draws: ['bloom-look', 'green-shine', 'silver-green-lie', 'iron-blue-place', 'drop-place'],
    load: async () => (await import('./questions/blooms.tsx')).blooms,
  },
  {
    draws: ['cutline-bottom', 'cutline-end', 'cutline-order'],
    load: async () => (await import('./questions/cut-lines.tsx')).cutLines,
  },
  {
    draws: ['dots-rim', 'openwork-edge', 'relief-form', 'toolmark-kind'],
    load: async () => (await import('./questions/dents-and-relief.tsx')).dentsAndRelief,
  },
  {
    draws: ['fill-surface', 'fill-edge'],
    load: async () => (await import('./questions/fields.tsx')).fields,
  },
  {
    draws: ['glass-skin', 'drops-where'],
    load: async () => (await import('./questions/glass-skins.tsx')).glassSkins,
  },
  {
    draws: ['gold-film-edge', 'gold-film-beneath'],
    load: async () => (await import('./questions/gold-films.tsx')).goldFilms,
  },
  {
    draws: ['grain-texture', 'leather-edge'],
    load: async () => (await import('./questions/grain-and-leather.tsx')).grainAndLeather,
  },
  {
    draws: ['green-form', 'green-beside', 'seam-line'],
    load: async () => (await import('./questions/green-forms.tsx')).greenForms,
  },
  {
    draws: ['chip-below', 'blue-look', 'waxy-place'],
    load: async () => (await import('./questions/green-layers.tsx')).greenLayers,
  },
  {
    draws: [
      'openwork-order',
      'openwork-behind',
      'openwork-around',
      'cutline-and-crust',
      'cutline-fill',
      'relief-back',
      'dots-order',
      'dots-likeness',
      'toolmark-and-crust',
    ],
    load: async () => (await import('./questions/holes-and-dents.tsx')).holesAndDents,
  },
  {
    draws: ['iron-black-look'],
    load: async () => (await import('./questions/iron-black.tsx')).ironBlack,
  },
  {
    draws: ['crack-run', 'crack-walls', 'blister-shell', 'flake-scar'],
    load: async () => (await import('./questions/iron-breaks.tsx')).ironBreaks,
  },
  {
    draws: ['spot-place', 'crust-look', 'lump-look', 'drop-look'],
    load: async () => (await import('./questions/iron-crusts.tsx')).ironCrusts,
  },
  {
    draws: ['white-look', 'beneath-white', 'white-crust-break', 'grey-look', 'wart-look'],
    load: async () => (await import('./questions/lead-and-tin.tsx')).leadAnswers,
  },
  {
    draws: ['bright-place', 'iron-skin-place'],
    load: async () => (await import('./questions/on-iron.tsx')).onIron,
  },
  {
    draws: [
      'weave-place',
      'weave-evenness',
      'grain-direction',
      'grain-end',
      'grain-in-break',
      'leather-surface',
      'leather-place',
    ],
    load: async () => (await import('./questions/organic-places.tsx')).organicPlaces,
  },
  {
    draws: ['peg-surface', 'peg-fixing', 'cell-floor'],
    load: async () => (await import('./questions/pegs-and-cells.tsx')).pegsAndCells,
  },
  {
    draws: ['skin-place', 'gold-film-place', 'rust-green-place', 'glint-place', 'wire-course'],
    load: async () => (await import('./questions/places.tsx')).placeAnswers,
  },
  {
    draws: ['red-break', 'cell-shape', 'lead-red-look', 'red-look', 'yellow-look'],
    load: async () => (await import('./questions/reds-and-cells.tsx')).redsAndCells,
  },
  {
    draws: ['silver-crack-run', 'silver-break', 'silver-look'],
    load: async () => (await import('./questions/silver.tsx')).silverAnswers,
  },
  {
    draws: ['weave-crossing', 'weave-strand', 'fibre-shape', 'fibre-bond'],
    load: async () => (await import('./questions/threads.tsx')).threadAnswers,
  },
  {
    draws: ['skin-edge', 'skin-break'],
    load: async () => (await import('./questions/white-skins.tsx')).whiteSkins,
  },
  {
    draws: ['wire-seat', 'glint-form'],
    load: async () => (await import('./questions/wires-and-glints.tsx')).wiresAndGlints,
  },
  {
    draws: ['bare-look', 'red-lie'],
    load: async () => (await import('./questions/bare-metal.tsx')).bareMetal,
  },
  {
    draws: ['black-crust-look', 'flake-inside'],
    load: async () => (await import('./questions/black-crusts.tsx')).blackCrusts,
  },
  {
    draws: ['blue-crust-place', 'white-zinc-place', 'yellow-beside'],
    load: async () => (await import('./questions/beside-what.tsx')).besideWhat,
  },
  {
    draws: ['chalk-below', 'glass-feel'],
    load: async () => (await import('./questions/chalk-and-glass.tsx')).chalkAndGlass,
  },
  {
    draws: ['toolmark-place', 'relief-order', 'dots-back'],
    load: async () => (await import('./questions/toolmarks.tsx')).toolmarks,
  },
  {
    draws: ['iron-skin-tone', 'rust-green-kind', 'fresh-debris'],
    load: async () => (await import('./questions/iron-skins.tsx')).ironSkins,
  },
  {
    draws: ['fill-colour', 'silver-light'],
    load: async () => (await import('./questions/colours-and-light.tsx')).coloursAndLight,
  },
  {
    draws: ['bag-powder-look', 'bag-powder-place', 'bag-powder-again'],
    load: async () => (await import('./questions/bag-powder.tsx')).bagPowder,
  },
]
