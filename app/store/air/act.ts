'use server'

import { refused } from '../../../lib/base/outcome.ts'
import { outdoorRefusalWords, outdoorVerdictWords } from '../../../lib/wording/air.ts'
import { figureTakenWords } from '../../../lib/wording/figure-taken.ts'
import { servicesHere } from '../../_server/services.ts'
import { keepForm } from '../_forms/keep-form.ts'
import { formReader } from '../_forms/read-form.ts'
import type { Said } from '../_forms/said.ts'
import type { OutdoorSaid } from './outdoor-said.ts'
import { outdoorRead } from './read-outdoors.ts'
import { couponRead } from './read-coupon.ts'

export async function keepNewCoupon(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: couponRead,
    keep: async (services, coupon, by) => {
      const kept = await services.keepCoupon(coupon, by)
      // A box that was typed by hand and is not listed is a fault of that field, not of the page.
      return !kept.ok && kept.problems.kind === 'missing' && kept.problems.what === 'box'
        ? refused({ kind: 'not-accepted', field: 'box', because: 'unknown' } as const)
        : kept
    },
    says: 'Kept in the diary. What it says stands on this page.',
  })
}

/** Nothing is kept of it. */
export async function askOutdoors(_before: OutdoorSaid | null, form: FormData): Promise<OutdoorSaid> {
  const reader = formReader(form)
  const { air, place } = outdoorRead(reader)
  const none = { wrong: reader.wrong, given: reader.given(), refusals: [], verdicts: [], figures: [] }
  if (Object.keys(reader.wrong).length > 0) return none
  const services = await servicesHere()
  const { knowledge } = services
  const judged = services.judgeOutdoorAir(air, place)
  if (!judged.ok) return { ...none, refusals: judged.problems.map(outdoorRefusalWords) }
  const ids = [...new Set(judged.value.flatMap(({ figures }) => figures))]
  return {
    ...none,
    verdicts: judged.value.map((verdict) => outdoorVerdictWords(verdict, knowledge)),
    figures: ids.flatMap((id) => {
      const figure = knowledge.figures[id]
      return figure === undefined
        ? []
        : [{ id, says: figure.says, known: figure.known, printed: figureTakenWords(figure, knowledge) }]
    }),
  }
}
