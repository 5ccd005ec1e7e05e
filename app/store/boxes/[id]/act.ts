'use server'

import { lidsSeen, moves } from '../../../../lib/record/store-diary.ts'
import { keepForm } from '../../_forms/keep-form.ts'
import type { FormReader } from '../../_forms/read-form.ts'
import type { Said } from '../../_forms/said.ts'

/** What was filled in, without the questions left open. */
function filled<Answers extends Readonly<Record<string, unknown>>>(answers: Answers) {
  return Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== undefined)) as {
    readonly [Name in keyof Answers]: Exclude<Answers[Name], undefined>
  }
}

const boxOf = (form: FormReader) => ({ projectId: form.text('project'), box: form.text('box') })
const versionOf = (form: FormReader) => (form.text('version') === '' ? null : Number(form.text('version')))
const percent = { from: 0, to: 100 }

export async function renewGel(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => ({
      ...boxOf(reader),
      version: versionOf(reader),
      on: reader.day('on', today),
      gel_kg: reader.neededNumber('gel_kg', { from: 0, to: 1000 }),
      ...filled({
        gel_kind: reader.words('gel_kind'),
        gel_rh_percent: reader.number('gel_rh_percent', percent),
        removed_kg: reader.number('removed_kg', { from: 0, to: 1000 }),
        note: reader.words('note'),
      }),
    }),
    keep: (services, gel, by) => services.renewGel(gel, by),
    says: 'Kept. The forecast begins anew with this gel; read the strip within the week.',
  })
}

export async function readStrip(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => {
      const [low, high] = reader.text('strip').split('-').map(Number)
      const round = {
        box: reader.text('box'),
        on: reader.day('on', today),
        ...filled({
          strip_low: reader.text('strip') === '' ? undefined : low,
          strip_high: reader.text('strip') === '' ? undefined : high,
          gel_colour: reader.words('gel_colour'),
          lid: reader.words('lid'),
        }),
      }
      if (Object.keys(round).length === 2) reader.wrong['strip'] = 'Say at least one thing that was seen.'
      return { projectId: reader.text('project'), rounds: [round] }
    },
    keep: (services, walk, by) => services.keepRound(walk, by),
    says: 'Kept, and heeded in the forecast.',
  })
}

export async function noteLid(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => ({
      ...boxOf(reader),
      on: reader.day('on', today),
      lid: lidsSeen.find((one) => one === reader.text('lid')) ?? 'opened',
      ...filled({ minutes: reader.number('minutes', { from: 0, to: 100_000 }), why: reader.words('why') }),
    }),
    keep: (services, lid, by) => services.noteLid(lid, by),
    says: 'Kept in the diary of the box.',
  })
}

export async function changeWater(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => ({
      ...boxOf(reader),
      on: reader.day('on', today),
      ...filled({ note: reader.words('note') }),
    }),
    keep: (services, water, by) => services.changeWater(water, by),
    says: 'Kept. The next change is counted from this day.',
  })
}

export async function moveFind(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => {
      const move = moves.find((one) => one === reader.text('move')) ?? 'out'
      if (move === 'to-box') reader.needed('to', 'Write which box it goes to.')
      if (move === 'out') reader.needed('where', 'Write where it goes, so that it can be found.')
      return {
        findId: reader.needed('find', 'Choose a find.'),
        move,
        on: reader.day('on', today),
        ...filled({
          box: move === 'to-box' ? reader.words('to') : undefined,
          where: reader.words('where'),
          why: reader.words('why'),
        }),
      }
    },
    keep: (services, moved, by) => services.moveFind(moved, by),
    says: 'Kept. Lists show it where it is now.',
  })
}

export async function placeLogger(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader, today) => ({
      projectId: reader.text('project'),
      serial: reader.needed('serial', 'Choose a logger.'),
      version: null,
      on: reader.day('on', today),
      ...(reader.text('does') === 'away' ? {} : { box: reader.text('box') }),
    }),
    keep: (services, placed, by) => services.placeLogger(placed, by),
    says: 'Kept. Its readings from that day on belong to where it stands.',
  })
}
