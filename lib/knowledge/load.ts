import type { Knowledge } from './knowledge.ts'

/** The compiled knowledge from its JSON text or value; made by `knowledge compile`, so only its outline is looked at. */
export function knowledgeFrom(json: unknown): Knowledge {
  const value: unknown = typeof json === 'string' ? JSON.parse(json) : json
  const evidence = ['matters', 'questions', 'elements', 'matrices']
  const library = ['works', 'figures', 'decisions', 'methods', 'contested', 'tasks', 'isotherms', 'vocabulary']
  const parts = ['hash', ...library, ...evidence]
  const missing = parts.filter((part) => !Object.hasOwn(Object(value) as object, part))
  if (missing.length > 0) throw new Error(`This is no compiled knowledge: ${missing.join(', ')} missing`)
  return value as Knowledge
}
