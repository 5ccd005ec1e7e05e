import type { SourceText } from './imports.ts'

interface PublicFunction {
  readonly name: string
  readonly line: number
  readonly params: readonly string[]
  /** The comment that stands right before it, marks taken off; null where none does. */
  readonly head: string | null
}

const opening =
  /(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*)?^export (?:async )?(?:function\*? (\w+)[^(]*|const (\w+)\b[^=]*= (?:async )?(?:<[^>]*>)?(?=\([^)]*\)[^=\n]*=>))\(/gm

/** Cuts at commas that stand in no bracket; `from` lies behind the opening one. */
function partsUntilClosed(text: string, from: number): readonly string[] {
  const parts: string[] = []
  let depth = 0
  let start = from
  for (let at = from; at < text.length; at += 1) {
    const sign = text[at]!
    const arrow = sign === '>' && text[at - 1] === '='
    if (depth === 0 && (sign === ',' || sign === ')')) {
      parts.push(text.slice(start, at).trim())
      if (sign === ')') break
      start = at + 1
    } else if ('([{<'.includes(sign)) depth += 1
    else if (')]}>'.includes(sign) && !arrow) depth -= 1
  }
  return parts.filter((part) => part !== '')
}

export function publicFunctions(text: string): readonly PublicFunction[] {
  return [...text.matchAll(opening)].map((match) => ({
    name: (match[2] ?? match[3])!,
    line: text.slice(0, match.index + match[0].lastIndexOf('export ')).split('\n').length,
    params: partsUntilClosed(text, match.index + match[0].length).map((part) => /^[\w$]*/.exec(part)![0]),
    head: match[1]?.replaceAll(/^\s*\* ?/gm, '') ?? null,
  }))
}

const unit = /\[[^\]]+\]/

function tags(head: string): readonly { readonly tag: string; readonly text: string }[] {
  return head
    .split(/^(?=@)/m)
    .slice(1)
    .map((part) => ({ tag: /^@\w+/.exec(part)![0], text: part.replace(/^@\w+\s*/, '').trim() }))
}

/** What a formula's head lacks: `file:line name what`. */
export function headless({ file, text }: SourceText, functions = publicFunctions(text)): readonly string[] {
  return functions.flatMap(({ name, line, params, head }) => {
    const complain = (what: string) => `${file}:${line} ${name} ${what}`
    if (head === null) return [complain('has no head')]
    const told = tags(head)
    const named = told.filter(({ tag }) => tag === '@param').map(({ text: param }) => param)
    const lacks: string[] = []
    if (!unit.test(head.split(/^@/m)[0]!)) lacks.push('does not say what it returns [unit]')
    for (const param of params) {
      const said = named.find((words) => words.split(/\s/)[0] === param)
      if (param === '') lacks.push('has a parameter without a name')
      else if (said === undefined) lacks.push(`does not say what ${param} is`)
      else if (!/^\w+\s+\[[^\]]+\]\s+\S/.test(said)) lacks.push(`says of ${param} no [unit] or no meaning`)
    }
    for (const words of named) {
      const param = words.split(/\s/)[0]!
      if (!params.includes(param)) lacks.push(`speaks of ${param}, which it does not take`)
    }
    for (const tag of ['@source', '@valid', '@agrees'])
      if (!told.some((one) => one.tag === tag && one.text !== '')) lacks.push(`lacks ${tag}`)
    const agrees = told.find(({ tag }) => tag === '@agrees')
    if (agrees && !/\d|exact/i.test(agrees.text)) lacks.push('does not say within what it agrees')
    return lacks.map(complain)
  })
}

/** The functions that call themselves a published formula, in rooms where not every function is one. */
export const sourced = (text: string): readonly PublicFunction[] =>
  publicFunctions(text).filter(({ head }) => head !== null && /^@source\b/m.test(head))
