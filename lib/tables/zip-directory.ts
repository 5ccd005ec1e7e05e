/** One entry as the directory at the end of a zip file declares it; nothing is inflated to learn this. */
export interface ZipEntry {
  readonly name: string
  readonly method: number
  readonly compressedBytes: number
  readonly bytes: number
  /** Where the entry's own header stands in the file. */
  readonly at: number
}

export type ZipDirectory =
  | { readonly ok: true; readonly entries: readonly ZipEntry[] }
  | { readonly ok: false; readonly why: ZipRefusal }

export type ZipRefusal =
  | 'no-directory'
  | 'too-many-entries'
  | 'too-large'
  | 'too-dense'
  | 'name-leaves-folder'
  | 'encrypted'

const endMark = 0x06054b50
const entryMark = 0x02014b50
const mostEntries = 200
const mostBytes = 64 * 1024 * 1024
const mostRatio = 100
/** Below this a high ratio is only a small file of blanks. */
const denseFrom = 256 * 1024

function findEnd(view: DataView): number {
  const earliest = Math.max(0, view.byteLength - 22 - 65_535)
  for (let at = view.byteLength - 22; at >= earliest; at--)
    if (view.getUint32(at, true) === endMark) return at
  return -1
}

function readEntries(bytes: Uint8Array, view: DataView, end: number): ZipDirectory {
  const count = view.getUint16(end + 10, true)
  if (count > mostEntries) return { ok: false, why: 'too-many-entries' }
  let at = view.getUint32(end + 16, true)
  const entries: ZipEntry[] = []
  for (let entry = 0; entry < count; entry++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== entryMark)
      return { ok: false, why: 'no-directory' }
    if ((view.getUint16(at + 8, true) & 1) === 1) return { ok: false, why: 'encrypted' }
    const nameLength = view.getUint16(at + 28, true)
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      method: view.getUint16(at + 10, true),
      compressedBytes: view.getUint32(at + 20, true),
      bytes: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    })
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return { ok: true, entries }
}

const leaves = (name: string) => name.split(/[\\/]/).includes('..') || /^(?:[\\/]|[a-z]:)/i.test(name)
const dense = (entry: ZipEntry) => entry.bytes > denseFrom && entry.bytes > entry.compressedBytes * mostRatio

/** The directory, or why nothing of the file will be inflated. A file of the large kind declares sizes that are refused. */
export function zipDirectory(bytes: Uint8Array): ZipDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const end = bytes.length < 22 ? -1 : findEnd(view)
  if (end === -1) return { ok: false, why: 'no-directory' }
  const directory = readEntries(bytes, view, end)
  if (!directory.ok) return directory
  const { entries } = directory
  if (entries.some((entry) => leaves(entry.name))) return { ok: false, why: 'name-leaves-folder' }
  if (entries.reduce((sum, entry) => sum + entry.bytes, 0) > mostBytes) return { ok: false, why: 'too-large' }
  if (entries.some(dense)) return { ok: false, why: 'too-dense' }
  return directory
}
