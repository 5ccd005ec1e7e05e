import { setImmediate } from 'node:timers/promises'

/** So many records between two breaths: about as long as a page may be kept waiting. */
const recordsABreath = 25

/**
 * A list in pieces with a breath before each. Planning and SQLite never let go by themselves, and everybody else's pages
 * would wait for the whole of it.
 */
export async function* inBreaths<Item>(items: readonly Item[]): AsyncGenerator<readonly Item[]> {
  for (let at = 0; at < items.length; at += recordsABreath) {
    await setImmediate()
    yield items.slice(at, at + recordsABreath)
  }
}
