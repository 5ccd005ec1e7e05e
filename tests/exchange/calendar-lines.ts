/** A small reader of RFC 5545 of our own: what a calendar says, or what is wrong with how it says it. */
export interface Property {
  readonly name: string
  readonly params: string
  readonly value: string
}

export interface Read {
  readonly flaws: readonly string[]
  /** Those of the calendar itself. */
  readonly own: readonly Property[]
  readonly events: readonly (readonly Property[])[]
}

const octets = (text: string): number => new TextEncoder().encode(text).length

export function readCalendar(text: string): Read {
  const flaws: string[] = []
  if (!text.endsWith('\r\n')) flaws.push('does not end with a line break')
  if (/(?<!\r)\n|\r(?!\n)/.test(text)) flaws.push('has a lone line break')
  const lines = text.split('\r\n').slice(0, -1)
  for (const line of lines) if (octets(line) > 75) flaws.push(`a line of ${octets(line)} octets: ${line}`)
  // A fold must not cut a sign in two; where one does, decoding has left a replacement sign.
  if (text.includes('\ufffd')) flaws.push('a sign cut in two')
  const whole = lines.join('\r\n').replaceAll('\r\n ', '').split('\r\n')
  const own: Property[] = []
  const events: Property[][] = []
  const open: string[] = []
  for (const line of whole) {
    const match = /^([A-Z-]+)((?:;[A-Z-]+=[^:;]+)*):(.*)$/u.exec(line)
    if (match === null) {
      flaws.push(`no property: ${line}`)
      continue
    }
    const [, name = '', params = '', value = ''] = match
    if (name === 'BEGIN') {
      open.push(value)
      if (value === 'VEVENT') events.push([])
    } else if (name === 'END') {
      if (open.pop() !== value) flaws.push(`${value} ends where it did not begin`)
    } else (open.at(-1) === 'VEVENT' ? events.at(-1)! : own).push({ name, params, value })
  }
  if (open.length > 0) flaws.push(`${open.join()} does not end`)
  if (whole[0] !== 'BEGIN:VCALENDAR') flaws.push('does not begin as a calendar')
  flaws.push(...once(own, ['VERSION', 'PRODID'], ['METHOD', 'CALSCALE']))
  if (events.length === 0) flaws.push('no component')
  for (const event of events)
    flaws.push(
      ...once(
        event,
        ['UID', 'DTSTAMP'],
        ['DTSTART', 'DTEND', 'SUMMARY', 'DESCRIPTION', 'SEQUENCE', 'TRANSP'],
      ),
    )
  return { flaws, own, events }
}

/** RFC 5545, 3.6 and 3.6.1: what must be there once, and what may be there once. */
function once(
  properties: readonly Property[],
  must: readonly string[],
  may: readonly string[],
): readonly string[] {
  const times = (name: string) => properties.filter((property) => property.name === name).length
  return [
    ...must.filter((name) => times(name) !== 1).map((name) => `${name} stands ${times(name)} times`),
    ...may.filter((name) => times(name) > 1).map((name) => `${name} stands ${times(name)} times`),
  ]
}

/** RFC 5545, 3.3.11. */
export const plainText = (value: string): string =>
  value.replace(/\\([\\;,nN])/g, (_, sign: string) => (sign === 'n' || sign === 'N' ? '\n' : sign))

export const valueOf = (properties: readonly Property[], name: string): string | undefined =>
  properties.find((property) => property.name === name)?.value
