'use server'

import type { IsoDate } from '../../../lib/base/calendar.ts'
import { fixedPoint, salts, type Salt } from '../../../lib/climate/fixed-points.ts'
import { correctionThrough } from '../../../lib/climate/fixed-points-correction.ts'
import type { SaltPoint } from '../../../lib/record/store-loggers.ts'
import { correctionRefusalWords } from '../../../lib/wording/humidity-salts.ts'
import { keepForm } from '../_forms/keep-form.ts'
import type { FormReader } from '../_forms/read-form.ts'
import type { Said } from '../_forms/said.ts'

const percent = { from: 0, to: 100 }

/** One salt of the form; a second that was left out is none. */
function point(form: FormReader, name: 'first' | 'second', temperatureC: number, on: IsoDate): SaltPoint[] {
  const salt = salts.find((one): one is Salt => one === form.text(name))
  const field = `${name}_read`
  const read = form.number(field, percent)
  if (salt === undefined) {
    if (read !== undefined) form.wrong[name] = 'Say over which salt it read that.'
    return []
  }
  if (read === undefined) {
    form.wrong[field] ??= 'Write what it read over this salt.'
    return []
  }
  const held = fixedPoint(salt, temperatureC)
  if (held === null) {
    form.wrong['temperature'] = correctionRefusalWords({ code: 'salt-out-of-range', salt, temperatureC })
    return []
  }
  return [{ salt, trueRhPercent: Math.round(held.rhPercent * 100) / 100, readRhPercent: read, on }]
}

/** What it read over salts, in place of what it read over them before; its readings are corrected by it from now on. */
export async function keepSalts(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => {
      const on = reader.day('on', today)
      const temperatureC = reader.neededNumber('temperature', { from: -20, to: 60 })
      const points = (['first', 'second'] as const).flatMap((name) => point(reader, name, temperatureC, on))
      if (Object.keys(reader.wrong).length === 0) {
        const line = correctionThrough(points)
        if (!line.ok) reader.wrong['first_read'] = line.problems.map(correctionRefusalWords).join(' ')
      }
      return {
        loggerId: reader.text('id'),
        projectId: reader.text('project'),
        version: Number(reader.text('version')),
        points,
      }
    },
    keep: async (services, { loggerId, projectId, version, points }, by) => {
      const shown = await services.showLogger({ loggerId })
      if (!shown.ok) return shown
      const logger = { ...shown.value.logger.given, salts: points }
      return services.keepLogger({ projectId, logger, version }, by)
    },
    says: 'Kept. Its readings are corrected by it, and the page says so.',
  })
}
