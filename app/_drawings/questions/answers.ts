import type { Drawings } from '../kit/drawn.ts'
import { bagPowder } from './bag-powder.tsx'
import { blackFills } from './black-fills.tsx'
import { blackLayers } from './black-layers.tsx'
import { blooms } from './blooms.tsx'
import { cutLines } from './cut-lines.tsx'
import { dentsAndRelief } from './dents-and-relief.tsx'
import { fields } from './fields.tsx'
import { glassSkins } from './glass-skins.tsx'
import { goldFilms } from './gold-films.tsx'
import { grainAndLeather } from './grain-and-leather.tsx'
import { greenForms } from './green-forms.tsx'
import { greenLayers } from './green-layers.tsx'
import { holesAndDents } from './holes-and-dents.tsx'
import { ironBlack } from './iron-black.tsx'
import { ironBreaks } from './iron-breaks.tsx'
import { ironCrusts } from './iron-crusts.tsx'
import { leadAnswers } from './lead-and-tin.tsx'
import { onIron } from './on-iron.tsx'
import { organicPlaces } from './organic-places.tsx'
import { pegsAndCells } from './pegs-and-cells.tsx'
import { placeAnswers } from './places.tsx'
import { redsAndCells } from './reds-and-cells.tsx'
import { silverAnswers } from './silver.tsx'
import { threadAnswers } from './threads.tsx'
import { whiteSkins } from './white-skins.tsx'
import { wiresAndGlints } from './wires-and-glints.tsx'
import { bareMetal } from './bare-metal.tsx'
import { blackCrusts } from './black-crusts.tsx'
import { besideWhat } from './beside-what.tsx'
import { chalkAndGlass } from './chalk-and-glass.tsx'
import { toolmarks } from './toolmarks.tsx'
import { ironSkins } from './iron-skins.tsx'
import { coloursAndLight } from './colours-and-light.tsx'

/** The drawings of answers to questions, by `question/answer`. */
export const answers: Drawings = {
  ...bagPowder,
  ...bareMetal,
  ...blackCrusts,
  ...besideWhat,
  ...chalkAndGlass,
  ...toolmarks,
  ...ironSkins,
  ...coloursAndLight,
  ...blackFills,
  ...cutLines,
  ...dentsAndRelief,
  ...fields,
  ...glassSkins,
  ...goldFilms,
  ...grainAndLeather,
  ...greenForms,
  ...greenLayers,
  ...ironBlack,
  ...ironBreaks,
  ...ironCrusts,
  ...leadAnswers,
  ...onIron,
  ...pegsAndCells,
  ...silverAnswers,
  ...placeAnswers,
  ...blackLayers,
  ...holesAndDents,
  ...organicPlaces,
  ...redsAndCells,
  ...blooms,
  ...threadAnswers,
  ...whiteSkins,
  ...wiresAndGlints,
}
