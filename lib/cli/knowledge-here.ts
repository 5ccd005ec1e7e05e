import type { Knowledge } from '../knowledge/knowledge.ts'
import { loadKnowledge } from '../start.ts'
import { exit, Hindered, type Surroundings } from './command.ts'
import { command as compile } from './knowledge-compile.ts'

/** The knowledge of content/ as it stands now, made again first where content has changed. */
export async function knowledgeHere(surroundings: Surroundings): Promise<Knowledge> {
  const code = await compile.run({ words: [], options: {} }, { ...surroundings, out: async () => undefined })
  if (code !== exit.done) throw new Hindered('The knowledge in content/ has errors; they stand above.')
  return loadKnowledge(surroundings.root)
}
