import { FILLS } from './looks/fills.ts'
import { GREEN } from './looks/green.ts'
import { METALS } from './looks/metals.ts'
import { SKINS } from './looks/skins.ts'
import { TRACES } from './looks/traces.ts'

/** Questions of the field `looked` and the answers they take. */
export type Looks = Readonly<Record<string, readonly string[]>>

/**
 * The ids are the contract: added, never renamed. Their words stand in content/questions; `knowledge check` fails where
 * the two lists differ. Beside these, `none` (none of them) and `unknown` (cannot tell) are answers of every question.
 */
export const looks: Looks = { ...SKINS, ...FILLS, ...TRACES, ...GREEN, ...METALS }
