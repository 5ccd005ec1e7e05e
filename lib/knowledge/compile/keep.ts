import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { canonical } from '../../base/canonical.ts'
import type { Knowledge } from '../knowledge.ts'

/** Where the compiled knowledge is kept, from the project's folder. */
export const knowledgeFile = '.quietmetal/knowledge.json'
const stampFile = '.quietmetal/knowledge.stamp'

/** Whether the kept knowledge was made from content with this stamp. */
export function isKept(root: string, stamp: string): boolean {
  try {
    return (
      readFileSync(path.join(root, stampFile), 'utf8') === stamp &&
      readFileSync(path.join(root, knowledgeFile)).length > 0
    )
  } catch {
    return false
  }
}

/** Written beside and moved into place, so that a reader never finds half a file. */
export function keep(root: string, knowledge: Knowledge, stamp: string): void {
  mkdirSync(path.join(root, path.dirname(knowledgeFile)), { recursive: true })
  writeAside(path.join(root, knowledgeFile), canonical(knowledge))
  writeAside(path.join(root, stampFile), stamp)
}

function writeAside(file: string, text: string): void {
  const aside = `${file}.${process.pid}`
  writeFileSync(aside, text)
  renameSync(aside, file)
}
