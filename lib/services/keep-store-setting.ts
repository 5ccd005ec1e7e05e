import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { notAccepted, wrongNumber } from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'
import { nothingSet, type StoreSettingGiven } from './store-setting.ts'

export interface StoreSettingShown {
  readonly setting: StoreSettingGiven
  /** Null: nobody has set anything yet. */
  readonly version: number | null
}

export function showStoreSetting({ store }: World, projectId: string): Answer<StoreSettingShown> {
  return store.read(async (reads) => {
    if (!(await reads.projects.byId(projectId))) return refused(missing('project', projectId))
    const kept = await reads.settings.ofProject(projectId)
    return given({ setting: { ...nothingSet, ...kept?.given }, version: kept?.version ?? null })
  })
}

function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}

/** How the store is run: what renewals are levelled by, the gel as a stock, the clock on the wall. */
export async function keepStoreSetting(
  { store }: World,
  {
    projectId,
    setting,
    version,
  }: {
    readonly projectId: string
    /** What is left out stays as it is. */
    readonly setting: Partial<StoreSettingGiven>
    readonly version: number | null
  },
  by: Actor,
): Answer<{ readonly id: string }> {
  const { hoursByMonth, timeZone, ...numbers } = setting
  const wrong = wrongNumber(
    Object.entries(numbers).map(([field, value]) => [field, value ?? undefined, 0, 100_000] as const),
  )
  if (wrong) return wrong
  if (timeZone && !isZone(timeZone)) return notAccepted('timeZone', 'unknown')
  if (
    hoursByMonth &&
    (hoursByMonth.length !== 12 || hoursByMonth.some((hours) => !(hours >= 0 && hours <= 744)))
  )
    return notAccepted('hoursByMonth', 'unknown')
  return store.write('keep-store-setting', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    const kept = await writes.settings.ofProject(projectId)
    return writes.settings.keep(projectId, { given: { ...nothingSet, ...kept?.given, ...setting }, version })
  })
}
