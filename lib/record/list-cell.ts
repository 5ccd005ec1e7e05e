/**
 * Several values in one cell are parted by `;`. A semicolon that belongs to a value is written `\;`, and backslashes
 * that stand before a semicolon are doubled so that they stay what they are.
 */
export function splitList(text: string): readonly string[] {
  const items: string[] = []
  let item = ''
  for (const piece of text.match(/\\+;|;|[^\\;]+|\\+/g) ?? []) {
    if (!piece.endsWith(';')) item += piece
    else {
      const backslashes = piece.length - 1
      item += '\\'.repeat(backslashes >> 1)
      if (backslashes % 2 === 1) item += ';'
      else {
        items.push(item)
        item = ''
      }
    }
  }
  return [...items, item].map((one) => one.trim()).filter((one) => one !== '')
}

export function joinList(items: readonly string[]): string {
  return items
    .map((item, at) => {
      const inside = item.replace(/(\\*);/g, '$1$1\\;')
      return at === items.length - 1 ? inside : inside.replace(/\\+$/, '$&$&')
    })
    .join(';')
}
