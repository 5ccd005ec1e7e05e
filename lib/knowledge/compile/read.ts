import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import path from 'node:path'
import type { SourceFile } from './document.ts'

/** The folders of content/ that make up the knowledge; demo and glossary are no part of it. */
const folders = [
  'works',
  'figures',
  'decisions',
  'methods',
  'contested',
  'tasks',
  'isotherms',
  'vocabulary',
  'evidence',
  'questions',
  'elements',
  'matrices',
]

/** Every knowledge file under `root`/content, by its path from `root`. */
export function readContent(root: string): SourceFile[] {
  return contentFiles(root).map((file) => ({ file, text: readFileSync(path.join(root, file), 'utf8') }))
}

function contentFiles(root: string): string[] {
  return folders.flatMap((folder) => filesBelow(root, path.join('content', folder), '.yaml')).toSorted()
}

/**
 * Changes when a content file, the compiler or the record's ids were touched. Made of names, sizes and times only, so
 * that nothing has to be read to know that nothing changed.
 */
export function contentStamp(root: string): string {
  const code = ['base', 'knowledge', 'record'].flatMap((room) => filesBelow(root, path.join('lib', room), '.ts'))
  return [...contentFiles(root), ...code]
    .map((file) => {
      const { size, mtimeMs } = statSync(path.join(root, file))
      return `${file} ${size} ${mtimeMs}`
    })
    .join('\n')
}

function filesBelow(root: string, folder: string, ending: string): string[] {
  if (!existsSync(path.join(root, folder))) return []
  const entries = readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
}
