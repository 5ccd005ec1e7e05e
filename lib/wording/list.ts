/** `pin`, `pin and plate`, `pin, plate and backing`. */
export function listWords(items: readonly string[], last = 'and'): string {
  if (items.length <= 1) return items[0] ?? ''
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`
}

/** `1 find`, `3 finds`. */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en-GB')} ${count === 1 ? one : many}`
}
