'use server'

import type { LoggerGiven } from '../../../lib/record/store-loggers.ts'
import { keepForm } from '../_forms/keep-form.ts'
import type { FormReader } from '../_forms/read-form.ts'
import type { Said } from '../_forms/said.ts'

function loggerRead(form: FormReader): Omit<LoggerGiven, 'stood'> {
  const asked = {
    model: form.words('model'),
    floor_rh_percent: form.number('floor_rh_percent', { from: 0, to: 100 }),
    error_rh_percent: form.number('error_rh_percent', { from: 0, to: 50 }),
    calibration_due: form.dayOrNone('calibration_due'),
  }
  const said = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined))
  return { serial: form.needed('serial', 'Write the number it carries.'), ...said }
}

export async function keepNewLogger(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => ({
      projectId: reader.text('project'),
      logger: { ...loggerRead(reader), stood: [] },
      version: null,
    }),
    keep: (services, asked, by) => services.keepLogger(asked, by),
    says: 'Entered. Write on the page of its box that you put it there.',
  })
}

/** Against the version it was read at; where it stood and its salts are carried along. */
export async function mendLogger(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => ({
      loggerId: reader.text('id'),
      projectId: reader.text('project'),
      version: Number(reader.text('version')),
      said: loggerRead(reader),
    }),
    keep: async (services, { loggerId, projectId, version, said }, by) => {
      const shown = await services.showLogger({ loggerId })
      if (!shown.ok) return shown
      const { stood, salts, extra, serial } = shown.value.logger.given
      const logger = {
        ...said,
        serial,
        stood,
        ...(salts === undefined ? {} : { salts }),
        ...(extra === undefined ? {} : { extra }),
      }
      return services.keepLogger({ projectId, logger, version }, by)
    },
    says: 'Kept.',
  })
}
