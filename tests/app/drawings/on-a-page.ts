import { readFileSync, readdirSync } from 'node:fs'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { parse } from 'yaml'
import '../../../app/_drawings/all.ts'
import { Drawing } from '../../../app/_drawings/drawing.tsx'

export const drawnAs = (of: string, label?: string): string =>
  renderToStaticMarkup(createElement(Drawing, label === undefined ? { of } : { of, label }))

/** The form alone: every tone the same, ids without their key. */
export const formOf = (of: string): string =>
  drawnAs(of)
    .replaceAll(/var\(--[a-z-]+\)/g, 'tone')
    .replaceAll(/"(url\(#)?drawn-[a-z0-9-]+\)?"/g, '"id"')

interface Question {
  readonly id: string
  readonly answers: readonly { readonly id: string }[]
}

/** The answers of every question, as keys of drawings, by question. */
export function answersByQuestion(): ReadonlyMap<string, readonly string[]> {
  const folder = 'content/questions'
  const questions = readdirSync(folder).flatMap(
    (file) => parse(readFileSync(`${folder}/${file}`, 'utf8')) as Question[],
  )
  return new Map(questions.map(({ id, answers }) => [id, answers.map((answer) => `${id}/${answer.id}`)]))
}

interface Value {
  readonly id: string
  readonly 'confused-with'?: readonly string[]
}
interface Field {
  readonly id: string
  readonly values: readonly Value[]
}

/** The values of a field of the vocabulary with what they are taken for. */
export function valuesOf(field: 'seen' | 'evidence'): readonly Value[] {
  const fields = parse(readFileSync(`content/vocabulary/fields/${field}.yaml`, 'utf8')) as Field[]
  return fields.find(({ id }) => id === field)?.values ?? []
}
