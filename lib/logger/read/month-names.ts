import { fold } from '../../base/fold.ts'

/** Beginnings of month names in the languages loggers were seen to print: English, German, French, Spanish, Italian, Dutch, Portuguese, Nordic, Polish. */
const beginnings: ReadonlyMap<string, number> = new Map(
  [
    ['jan', 'ene', 'gen', 'sty'],
    ['feb', 'fev', 'lut'],
    ['mar', 'mrz', 'mrt', 'mae', 'maa'],
    ['apr', 'avr', 'abr', 'kwi'],
    ['may', 'mai', 'mag', 'mei', 'maj'],
    ['jun', 'juin', 'giu', 'cze'],
    ['jul', 'juil', 'lug', 'lip'],
    ['aug', 'aou', 'ago', 'sie'],
    ['sep', 'set', 'wrz'],
    ['oct', 'okt', 'ott', 'out', 'paz'],
    ['nov', 'lis'],
    ['dec', 'dez', 'dic', 'des', 'gru'],
  ].flatMap((names, at) => names.map((name) => [name, at + 1] as const)),
)

/** The month that a name, whole or short, is; null where it is none. */
export function monthOf(name: string): number | null {
  const plain = fold(name)
  return beginnings.get(plain.slice(0, 4)) ?? beginnings.get(plain.slice(0, 3)) ?? null
}
