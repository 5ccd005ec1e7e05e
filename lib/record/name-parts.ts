import type { PartRead, RowRead } from './read-row.ts'

export interface NamedPart {
  readonly name: string
  readonly part: PartRead
  readonly row: RowRead
  /** Another part had the name it was given. */
  readonly renamedFrom?: string
}

export interface NamedParts {
  readonly parts: readonly NamedPart[]
  /** Rows that say a named part a second time, word for word. */
  readonly repeated: readonly RowRead[]
}

const told = (part: PartRead) =>
  JSON.stringify([
    [...part.values].toSorted(),
    [...part.unread].toSorted(),
    Object.entries(part.extra).toSorted(),
  ])

/** `body-2`, `body-3` … : the first that is free. */
function free(name: string, taken: ReadonlySet<string>): string {
  let count = 2
  while (taken.has(`${name}-${count}`)) count++
  return `${name}-${count}`
}

/**
 * Component names are unique in a find. Given names go first; an unnamed part is the body, a second one takes its role,
 * a further one is counted.
 */
export function nameParts(rows: readonly RowRead[]): NamedParts {
  const given = rows.flatMap((row) =>
    row.part ? [{ row, part: row.part, name: row.part.values.get('component') }] : [],
  )
  const reserved = new Set(given.flatMap(({ name }) => (typeof name === 'string' ? [name] : [])))
  const taken = new Map<string, PartRead>()
  const parts: NamedPart[] = []
  const repeated: RowRead[] = []
  const take = (name: string, row: RowRead, part: PartRead, renamedFrom?: string) => {
    taken.set(name, part)
    parts.push({ name, row, part, ...(renamedFrom === undefined ? {} : { renamedFrom }) })
  }
  for (const { row, part, name } of given) {
    if (typeof name === 'string') {
      if (!taken.has(name)) take(name, row, part)
      else if (told(taken.get(name)!) === told(part)) repeated.push(row)
      else take(free(name, new Set([...taken.keys(), ...reserved])), row, part, name)
      continue
    }
    const role = part.values.get('role')
    const wanted = ['body', ...(typeof role === 'string' && role !== 'unknown' ? [role] : [])]
    const all = new Set([...taken.keys(), ...reserved])
    take(wanted.find((candidate) => !all.has(candidate)) ?? free('body', all), row, part)
  }
  return { parts, repeated }
}
