import fs from 'node:fs'
import path from 'node:path'
import { rooms as table, type Room } from './rooms.ts'

export interface SourceText {
  /** From the project's folder, with forward slashes. */
  readonly file: string
  readonly text: string
}

const importing =
  /(?:^|\n)[ \t]*(?:import|export)\b([^'"`;]*?)\bfrom\s*['"]([^'"]+)['"]|(?:^|\n)[ \t]*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/g

export function filesUnder(root: string, folders: readonly string[], pattern: RegExp): readonly SourceText[] {
  return folders.flatMap((folder) =>
    fs
      .readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
      .map((name) => path.join(folder, name).replaceAll('\\', '/'))
      .filter((file) => pattern.test(file))
      .map((file) => ({ file, text: fs.readFileSync(path.join(root, file), 'utf8') })),
  )
}

export function roomOf(file: string, rooms: Readonly<Record<string, Room>> = table): string | null {
  const fits = Object.keys(rooms).filter((room) => file === room || file.startsWith(`${room}/`))
  return fits.toSorted((a, b) => b.length - a.length)[0] ?? null
}

function packageOf(target: string): string {
  if (target.startsWith('node:')) return target
  return target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/')
}

function mayPackage({ packages }: Room, target: string): boolean {
  const name = packageOf(target)
  return packages.includes(name) || (name.startsWith('node:') && packages.includes('node:'))
}

/** Every import of a file that the table does not allow: `file:line what`. */
export function breaches(
  { file, text }: SourceText,
  rooms: Readonly<Record<string, Room>> = table,
): readonly string[] {
  const name = roomOf(file, rooms)
  if (name === null) return [`${file}:1 stands in no room of the table`]
  const room = rooms[name]!
  return [...text.matchAll(importing)].flatMap((match) => {
    const target = match[2] ?? match[3] ?? match[4] ?? ''
    const typesOnly = /^\s*type\b/.test(match[1] ?? '')
    const start = match.index + (match[0].startsWith('\n') ? 1 : 0)
    const line = text.slice(0, start).split('\n').length
    const complain = (what: string) => [`${file}:${line} ${name} may not import ${what}`]
    if (!target.startsWith('.'))
      return mayPackage(room, target) ? [] : complain(`the package ${packageOf(target)}`)
    const other = path.posix.join(path.posix.dirname(file), target)
    const otherRoom = roomOf(other, rooms)
    if (otherRoom === null) return complain(`${other}, which stands in no room`)
    if (otherRoom === name || room.may.includes(otherRoom)) return []
    if (typesOnly && room.types?.includes(otherRoom)) return []
    return complain(room.types?.includes(otherRoom) ? `more than types of ${otherRoom}` : otherRoom)
  })
}
