/** Wide enough for a terminal beside a window, narrow enough to be read. */
const width = 96

/** Text broken at blanks; the first line begins with `first`, the others with as many blanks. */
export function wrap(first: string, text: string): string {
  const indent = ' '.repeat(first.length)
  const lines: string[] = []
  let line = first
  let words = 0
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (words > 0 && line.length + 1 + word.length > width) {
      lines.push(line)
      line = indent
      words = 0
    }
    line += words > 0 ? ` ${word}` : word
    words += 1
  }
  return [...lines, line.trimEnd()].join('\n')
}
