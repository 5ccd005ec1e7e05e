import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { overlapping } from '../record/logger-register.ts'
import type { LoggerGiven, Stand } from '../record/store-loggers.ts'
import { boxNamed, enterOnce, notAccepted, wrongDay, wrongNumber, type Happened } from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

/** A logger as its register has it: new, or corrected as a whole. */
export async function keepLogger(
  world: World,
  {
    projectId,
    logger,
    version,
  }: {
    readonly projectId: string
    readonly logger: LoggerGiven
    readonly version: number | null
  },
  by: Actor,
): Answer<{ readonly id: string }> {
  const serial = logger.serial.trim()
  if (serial === '') return notAccepted('serial', 'empty')
  const wrong = wrongNumber([
    ['floor_rh_percent', logger.floor_rh_percent, 0, 100],
    ['error_rh_percent', logger.error_rh_percent, 0, 50],
    ...(logger.salts ?? []).flatMap(({ trueRhPercent, readRhPercent }) => [
      ['salts', trueRhPercent, 0, 100] as const,
      ['salts', readRhPercent, 0, 100] as const,
    ]),
  ])
  if (wrong) return wrong
  if (logger.stood.some(({ from, to }) => from !== undefined && to !== undefined && from > to))
    return notAccepted('to', 'unknown')
  if (overlapping(logger.stood).length > 0) return notAccepted('from', 'taken')
  return world.store.write('keep-logger', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    const [known] = await writes.loggers.bySerials(projectId, [serial])
    // A new logger under a serial that is there already would take the other's place unseen.
    if (known && version === null) return notAccepted('serial', 'taken')
    const [kept] = await writes.loggers.keep(projectId, [{ given: { ...logger, serial }, version }])
    return kept!
  })
}

export interface LoggerPlaced extends Happened {
  readonly projectId: string
  readonly serial: string
  /** Of the logger as it was seen; null: whatever it is now. */
  readonly version: number | null
  /** Where it stands from that day on; neither: it was taken away. */
  readonly box?: string
  readonly room?: string
}

/** A logger carried to a box or a room: where it stood before ends there. */
export async function placeLogger(
  world: World,
  { projectId, serial, version, box, room, on, atMs = null }: LoggerPlaced,
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const wrong = wrongDay(world, on)
  if (wrong) return wrong
  return world.store.write<{ readonly entered: boolean }>('place-logger', by, async (writes) => {
    const [known] = await writes.loggers.bySerials(projectId, [serial])
    if (!known) return refused(missing('logger', serial))
    if (box !== undefined) {
      const listed = await boxNamed(writes, projectId, box)
      if (!listed.ok) return listed
    } else if (
      room !== undefined &&
      !(await writes.rooms.ofProject(projectId)).some((one) => one.given.room === room)
    )
      return refused(missing('room', room))
    const entered = await enterOnce(writes, projectId, {
      kind: 'logger-placed',
      box: box ?? null,
      room: room ?? null,
      findId: null,
      on,
      atMs,
      given: { serial },
    })
    if (!entered) return given({ entered })
    const before = known.given.stood.filter(({ from }) => from !== on)
    const ended = before.map((stand): Stand => {
      const standsThen = (stand.from ?? '') < on && (stand.to === undefined || stand.to > on)
      return standsThen ? { ...stand, to: on } : stand
    })
    const stand: Stand = {
      ...(box === undefined ? {} : { box }),
      ...(room === undefined ? {} : { room }),
      from: on,
    }
    const stood = box === undefined && room === undefined ? ended : [...ended, stand]
    const [kept] = await writes.loggers.keep(projectId, [{ given: { ...known.given, stood }, version }])
    return kept!.ok ? given({ entered }) : kept!
  })
}
