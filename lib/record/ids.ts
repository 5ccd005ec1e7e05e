/**
 * The ids of the condition record. They are the contract: stored data and imports rely on them, so ids are added, never
 * renamed. Their words (label, meaning, how to tell) stand in content/vocabulary; the knowledge compiler fails where the
 * two lists differ.
 */
export const burial = [
  'dry', 'free-draining', 'damp', 'waterlogged', 'freshwater', 'marine', 'intertidal',
  'acid-sand', 'calcareous', 'clay', 'peat', 'organic-urban', 'cess', 'ash-burnt', 'saline',
  'ploughsoil', 'industrial', 'grave',
] as const

export const stateNow = ['wet', 'damp', 'drying', 'dry', 'frozen'] as const
export const yesNo = ['yes', 'no'] as const
export const wettedBy = ['flood', 'leak', 'condensation', 'rain'] as const
export const liftedAs = ['loose', 'block', 'bandaged', 'vessel-with-contents'] as const
export const retention = ['keep', 'sample-kept', 'discard-proposed'] as const
export const significance = ['high', 'medium', 'low'] as const

export const packedIn = [
  'perforated-bag', 'sealed-bag', 'with-gel', 'dry-box', 'water-tub', 'foil', 'paper-envelope', 'metal-tin',
  'cardboard', 'wood', 'pvc', 'cotton-wool', 'rubber', 'wool-or-felt', 'newspaper', 'acid-free-tissue',
  'inert-foam', 'nothing',
] as const

export const doneAlready = [
  'washed', 'brushed', 'cleaned', 'desalinated', 'waxed', 'lacquered', 'consolidated', 'glued', 'oven-dried',
  'air-dried', 'oiled', 'benzotriazole', 'tannic-acid', 'electrolysis', 'silver-dip', 'wet-stored', 'alkaline-stored',
] as const

export const proposed = [
  'wash', 'dry-brush', 'hot-water', 'oven-drying', 'heat', 'freeze', 'ultrasonic', 'acid-or-edta', 'silver-dip',
  'alkaline-desalination', 'electrolysis', 'benzotriazole', 'tannic-acid', 'wax-or-lacquer', 'hydrogen-furnace',
  'investigative-cleaning', 'sampling',
] as const

export const hazardsNoticed = [
  'ammunition-like', 'firearm-like', 'luminous-paint', 'silvery-droplets', 'woven-white-fibre',
  'old-collection-label', 'blue-or-pink-gel', 'bone-hair-or-skin', 'sprung-or-pressurised',
  'fuel-or-chemical-smell', 'mould', 'sharp', 'gas-mask-or-helmet', 'white-crystals-on-organic',
  'swollen-tin-or-cylinder',
] as const

export const neededFor = [
  'dating', 'luminescence-dating', 'identification', 'publication', 'display', 'loan', 'phase-decision',
] as const

/** An open list: other kinds are kept as they are written. */
export const objectKind = [
  'nail', 'knife', 'lock', 'key', 'padlock', 'coin', 'vessel', 'shot', 'cartridge', 'brooch', 'buckle',
  'dress-pin', 'strap-fitting', 'weight', 'shears', 'spur', 'tool', 'weapon', 'bell', 'token', 'seal-matrix',
  'fish-hook', 'chain', 'spoon', 'badge', 'hinge', 'tack', 'horseshoe', 'instrument', 'coffin-fitting', 'mount',
  'ring', 'helmet', 'mail', 'hoard', 'slag-lump', 'sheet', 'wire', 'rod', 'unidentified-lump',
] as const

export const role = [
  'body', 'plate', 'pin', 'rivet', 'handle', 'backing', 'coating', 'inlay', 'setting', 'solder', 'filling', 'adhering',
] as const

export const material = [
  'iron', 'cast-iron', 'steel', 'copper-alloy', 'copper', 'bronze', 'brass', 'lead', 'tin', 'pewter', 'solder',
  'silver', 'base-silver', 'gold', 'zinc', 'aluminium', 'white-metal', 'magnesium', 'nickel-alloy',
  'metal-unidentified',
  'wood', 'leather', 'textile', 'bone', 'antler', 'horn', 'ivory', 'amber', 'jet', 'shell', 'coral',
  'organic-unidentified', 'mineral-preserved-organic',
  'glass', 'enamel', 'niello', 'ceramic', 'stone', 'slag', 'casting-waste', 'rubber', 'plastic', 'paper',
  'gemstone', 'wax-or-resin',
] as const

export const knownBy = ['assumed', 'label', 'seen', 'magnet', 'radiograph', 'analysis'] as const

export const seen = [
  'orange-brown-crust', 'soil-concretion', 'bright-orange-spots', 'orange-droplets', 'dry-orange-blisters',
  'lamination-cracks', 'loose-flakes', 'black-compact-layer', 'blue-powder', 'brassy-glint', 'pale-yellow-bloom',
  'red-purple-skin',
  'compact-green', 'warty-green', 'pale-green-powder', 'waxy-grey-green', 'red-layer', 'black-layer',
  'deep-blue-crust', 'pale-blue-powder', 'waxy-turquoise', 'brassy-film', 'bare-metal',
  'white-powder', 'white-hard-crust', 'grey-skin', 'red-yellow-layer', 'grey-warts', 'black-crust',
  'black-tarnish', 'lavender-grey-waxy', 'green-on-silver', 'brittle-cracks',
  'iridescence', 'glass-flaking', 'droplets-on-glass', 'chalky-fill',
  'powder-in-bag', 'loose-parts', 'salt-bloom', 'raised-green-along-seam', 'no-change-seen',
] as const

export const extent = ['trace', 'patches', 'most', 'all'] as const

export const evidence = [
  'white-metal-sheen', 'gold-coloured-film', 'black-in-cut-lines', 'black-in-recesses', 'glassy-fill', 'red-fill',
  'white-pegs', 'empty-cells', 'bright-specks-in-rust', 'contrasting-wire', 'green-stain-in-rust', 'weave-pattern',
  'wood-grain', 'leather-like-layer', 'fibres', 'openwork', 'cut-lines', 'cast-relief', 'punched-dots', 'tool-marks',
] as const

export const fragility = ['sound', 'fragile', 'friable', 'in-pieces'] as const
export const completeness = ['complete', 'most', 'part', 'fragment'] as const
export const originalSurface = ['visible', 'under-crust', 'lost'] as const
export const core = ['solid', 'partial', 'none'] as const

export const silverNitrate = ['positive', 'negative'] as const
export const magnet = ['strong', 'weak', 'none'] as const
export const radiograph = ['core-solid', 'core-partial', 'no-core', 'bright-lines', 'dense-specks'] as const
export const oxygenUptake = ['active', 'none'] as const
