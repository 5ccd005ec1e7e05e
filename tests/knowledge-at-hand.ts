import path from 'node:path'
import { compile } from '../lib/knowledge/compile/compile.ts'
import { readContent } from '../lib/knowledge/compile/read.ts'

/** The project's own content, compiled once for a test file. */
export const compiled = compile(readContent(path.resolve(import.meta.dirname, '..')))
export const { knowledge } = compiled
