import type { Outcome } from '../base/outcome.ts'
import { judgeOutdoors, type OutdoorVerdict } from '../boxes/air-outdoors.ts'
import type { OutdoorAir, OutdoorRefusal } from '../climate/corrosivity-outdoor.ts'
import type { World } from './ports.ts'

/** What a year of outdoor air does to bare metal by the standard, or why it does not say. */
export function judgeOutdoorAir(
  { knowledge }: Pick<World, 'knowledge'>,
  air: OutdoorAir,
  place: 'outdoors' | 'indoors',
): Outcome<readonly OutdoorVerdict[], readonly OutdoorRefusal[]> {
  return judgeOutdoors(air, place, knowledge)
}
