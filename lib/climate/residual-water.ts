import { heldGPerPercent, type Enclosure } from './enclosure.ts'

/**
 * How much a box rises from the water its contents still give off [%].
 * @param box [Enclosure] the closed box
 * @param waterG [g] what objects, foam, card or paper inside give off until they are as dry as the gel
 * @source balance of water: air and gel take it up
 * @valid up to about 30 %; objects never go wet into a box of gel, whatever this comes to
 * @agrees exact with the balance
 */
export function riseFromWaterPercent(box: Enclosure, waterG: number): number {
  return waterG / heldGPerPercent(box)
}
