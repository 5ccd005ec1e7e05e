import { mkdir, writeFile } from 'node:fs/promises'
import { demoFiles } from './files.ts'

/** `node tests/demo/write.ts`: writes content/demo anew after the assemblage was changed. */
const folder = new URL('../../content/demo/', import.meta.url)
await mkdir(new URL('logs/', folder), { recursive: true })
for (const [name, content] of await demoFiles()) await writeFile(new URL(name, folder), content)
