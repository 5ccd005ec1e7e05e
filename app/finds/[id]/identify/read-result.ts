import type { IsoDate } from '../../../../lib/base/calendar.ts'
import { methodFacts } from '../../../../lib/knowledge/method-facts.ts'
import { readTest } from '../../../../lib/record/tests.ts'
import type { ResultGiven } from '../../../../lib/services/enter-result.ts'
import type { FormReader } from '../../../store/_forms/read-form.ts'

const longest = { byWhom: 120, reference: 120, words: 2000 } as const

/** A line of the report, or a fault where it cannot be read. */
function line(reader: FormReader, field: string, text: string, wrong: string): readonly string[] {
  const read = readTest(text)
  if (read.ok) return [read.test.written]
  reader.wrong[field] = wrong
  return []
}

function ticked(reader: FormReader, name: string): readonly string[] {
  const start = `tick.${name}.`
  return Object.keys(reader.given()).flatMap((field) =>
    field.startsWith(start) ? [field.slice(start.length)] : [],
  )
}

function found(reader: FormReader, name: string): readonly string[] {
  const ticks = ticked(reader, name)
  const more = reader.text(`report.${name}`)
  if (ticks.length === 0 && more === '') return []
  if (ticks.includes('none') && (ticks.length > 1 || more !== '')) {
    reader.wrong[`tick.${name}`] = 'Something was found, or nothing was: not both.'
    return []
  }
  // Names of several words are one substance; commas part them.
  const named = more.split(/[,;+]/).map((one) => one.trim().replaceAll(/\s+/g, '-'))
  const all = [...ticks, ...named].filter((one) => one !== '')
  return line(reader, `report.${name}`, `${name}:${all.join('+')}`, 'Write names with commas between.')
}

function radiographed(reader: FormReader): readonly string[] {
  const ticks = ticked(reader, 'radiograph')
  if (ticks.includes('unknown') && ticks.length > 1) {
    reader.wrong['tick.radiograph'] = 'It shows something, or it could not be told: not both.'
    return []
  }
  return ticks.map((tick) => `radiograph:${tick}`)
}

function told(reader: FormReader, name: string): readonly string[] {
  const text = reader.text(`report.${name}`)
  if (text === '') return []
  const wrong =
    name === 'xrf'
      ? `“${text}” is not a list of elements. Write symbols with spaces between: Cu Sn Pb.`
      : `“${text}” is not a number.`
  return line(reader, `report.${name}`, `${name}:${text}`, wrong)
}

function toldBy(reader: FormReader, fact: string): readonly string[] {
  const name = fact.replaceAll('_', '-')
  if (name === 'xrd' || name === 'raman') return found(reader, name)
  if (name === 'radiograph') return radiographed(reader)
  return told(reader, name)
}

function looked(reader: FormReader): readonly string[] {
  return Object.entries(reader.given()).flatMap(([field, answer]) =>
    field.startsWith('look.') && answer !== '' ? [`${field.slice('look.'.length)}:${answer}`] : [],
  )
}

/** A result as it was given; what is wrong with it is left in the reader. */
export function resultRead(reader: FormReader, today: IsoDate): ResultGiven {
  const method = reader.text('method')
  const matter = reader.text('matter')
  const interpretation = reader.text('found')
  const report = [...(methodFacts[method] ?? []).flatMap((fact) => toldBy(reader, fact)), ...looked(reader)]
  const result: ResultGiven = {
    findId: reader.text('find'),
    component: reader.text('component'),
    method,
    on: reader.day('on', today),
    byWhom: reader.needed('byWhom', 'Say whose result it is.'),
    reference: reader.text('reference'),
    words: reader.text('words'),
    report,
    found: matter === '' || interpretation === '' ? null : { matter, interpretation },
  }
  for (const [name, most] of Object.entries(longest))
    if (reader.text(name).length > most) reader.wrong[name] = `This is too long: ${most} signs at most.`
  const faultless = Object.keys(reader.wrong).length === 0
  if (faultless && report.length === 0 && result.found === null && (result.words === '' || method === ''))
    reader.wrong[matter === '' ? 'words' : 'found'] = 'Say what the report says, or what it then is.'
  return result
}
