import { closest } from '../../record/likeness.ts'

/** The id that was probably meant, or null where none is near. */
export function nearest(word: string, among: Iterable<string>): string | null {
  return (
    closest(
      word,
      [...among].map((key) => ({ key })),
    )?.key ?? null
  )
}
