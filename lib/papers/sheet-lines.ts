const width = 100
const indent = 13

/** `  when       …`, its further lines under the first word. */
export function row(name: string, text: string): string[] {
  const [first = '', ...rest] = wrapped(text, indent)
  return [`  ${name.padEnd(indent - 2)}${first.trimStart()}`, ...rest]
}

export function wrapped(text: string, left: number): string[] {
  const lines: string[] = []
  let line = ' '.repeat(left)
  for (const word of text.split(/\s+/)) {
    if (line.trim() !== '' && line.length + word.length + 1 > width) {
      lines.push(line)
      line = ' '.repeat(left)
    }
    line += line.trim() === '' ? word : ` ${word}`
  }
  return [...lines, line]
}

/** A line to initial. */
export const checkedLines = (): string[] =>
  row('checked', 'initials ____________  date ____________  remark ______________________________')
