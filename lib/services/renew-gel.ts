import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import type { BoxGiven } from '../record/places.ts'
import { boxNamed, enterOnce, told, wrongDay, wrongNumber, type Happened } from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { Box } from './places.ts'
import type { World, Writes } from './ports.ts'

export interface GelRenewed extends Happened {
  readonly projectId: string
  readonly box: string
  /** Of the box as it was seen; null: whatever it is now. */
  readonly version: number | null
  readonly gel_kg: number
  readonly gel_kind?: string
  /** Relative humidity [%] the new gel was conditioned to. */
  readonly gel_rh_percent?: number
  /** Spent gel taken out; left out: as much as was in it. */
  readonly removed_kg?: number
  readonly note?: string
}

/** What is known of the box's gel from now on; of an older change than the newest known nothing changes. */
function withGel(box: BoxGiven, { on, gel_kg, gel_kind, gel_rh_percent }: GelRenewed): BoxGiven {
  if (box.gel_conditioned_on !== undefined && box.gel_conditioned_on > on) return box
  const { gel_rh_percent: _spent, ...kept } = box
  return {
    ...kept,
    gel_kg,
    gel_conditioned_on: on,
    opened_on: on,
    ...told({ gel_kind: gel_kind ?? box.gel_kind }),
    ...told({ gel_rh_percent }),
  }
}

/** Gel out of the dry stock into the box, and the spent gel onto the spent: where somebody keeps count. */
async function countStock(writes: Writes, box: Box, { projectId, gel_kg, removed_kg }: GelRenewed) {
  const setting = await writes.settings.ofProject(projectId)
  if (!setting) return
  const { gelDryKg, gelSpentKg } = setting.given
  const spent = removed_kg ?? box.given.gel_kg ?? 0
  const exact = (kg: number) => Math.max(0, Number(kg.toFixed(3)))
  const now = {
    ...setting.given,
    gelDryKg: gelDryKg === null ? null : exact(gelDryKg - gel_kg),
    gelSpentKg: gelSpentKg === null ? null : exact(gelSpentKg + spent),
  }
  if (gelDryKg !== null || gelSpentKg !== null)
    await writes.settings.keep(projectId, { given: now, version: null })
}

/** Fresh gel in a box: entered in the diary, the box as it is now, the stock counted. Sent again it changes nothing. */
export async function renewGel(
  world: World,
  gel: GelRenewed,
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const {
    projectId,
    box: name,
    version,
    on,
    atMs = null,
    gel_kg,
    gel_kind,
    gel_rh_percent,
    removed_kg,
    note,
  } = gel
  const wrong =
    wrongDay(world, on) ??
    wrongNumber([
      ['gel_kg', gel_kg, 0, 1000],
      ['gel_rh_percent', gel_rh_percent, 0, 100],
      ['removed_kg', removed_kg, 0, 1000],
    ])
  if (wrong) return wrong
  return world.store.write<{ readonly entered: boolean }>('renew-gel', by, async (writes) => {
    const box = await boxNamed(writes, projectId, name)
    if (!box.ok) return box
    const entered = await enterOnce(writes, projectId, {
      kind: 'gel-change',
      box: name,
      room: null,
      findId: null,
      on,
      atMs,
      given: { gel_kg, ...told({ gel_kind, gel_rh_percent, removed_kg, note }) },
    })
    if (!entered) return given({ entered })
    const now = withGel(box.value.given, gel)
    const [kept] = await writes.boxes.keep(projectId, [{ given: now, version }])
    if (!kept!.ok) return kept!
    await countStock(writes, box.value, gel)
    return given({ entered })
  })
}
