import type { Flaw, FlawAbout, FlawCode, Kind } from '../knowledge/flaw.ts'
import { evidenceSentences } from './flaws-evidence.ts'
import { listWords } from './list.ts'

const kinds: Readonly<Record<Kind, string>> = {
  work: 'work',
  figure: 'figure',
  decision: 'decision',
  rule: 'rule of this decision',
  fact: 'fact',
  code: 'code',
  answer: 'answer of this decision',
  unit: 'unit',
  contact: 'contact',
  contested: 'contested matter',
  method: 'method',
  task: 'task of the store',
  isotherm: 'isotherm',
  field: 'field',
  value: 'value of this field',
  hazard: 'hazard of the record',
  'object-kind': 'object kind of the record',
  treatment: 'proposed treatment of the record',
  matter: 'matter',
  rival: 'rival of this matter',
  group: 'group of this matter',
  state: 'state of this group',
  failure: 'failure of this group',
  question: 'question',
  'question-answer': 'answer of this question',
  element: 'element',
  line: 'emission line of this element',
  matrix: 'matrix',
  role: 'role of the record',
  material: 'material of the record',
  observation: 'observation of the record',
  test: 'test or result of the record',
}

/** Where a new thing of that kind is written. */
const homes: Partial<Readonly<Record<Kind, string>>> = {
  work: 'content/works',
  figure: 'content/figures',
  code: 'content/vocabulary/codes.yaml',
  unit: 'content/vocabulary/units.yaml',
  contact: 'content/vocabulary/contacts.yaml',
  contested: 'content/contested',
  method: 'content/methods',
  task: 'content/tasks',
  isotherm: 'content/isotherms',
  answer: '`answers`',
  question: 'content/questions',
  element: 'content/elements',
  matrix: 'content/matrices',
}

const meant = (near: string | null): string => (near === null ? '' : ` Did you mean ${near}?`)
const either = (wants: readonly string[]): string => listWords(wants, 'or')
const facts = (pairs: readonly (readonly [string, string])[]): string =>
  pairs.map(([fact, value]) => `${fact} ${value}`).join(', ')

type Sentences = { readonly [Code in FlawCode]: (about: FlawAbout[Code]) => string }

/** What is wrong and what to do about it, for each kind of flaw. */
const sentences: Sentences = {
  unreadable: ({ says }) => `This is not readable YAML: ${says}`,
  'unknown-key': ({ key, near }) => `There is no key "${key}" here.${meant(near)}`,
  'missing-key': ({ key, expected }) => `"${key}" is missing; write ${expected}.`,
  'wrong-form': ({ key, expected, found }) => `"${key}" is ${found}; write ${expected}.`,
  'file-name': ({ decision, expected }) =>
    `The decision ${decision} stands in ${expected}.yaml; name file and decision alike.`,
  'out-of-place': ({ folder }) => `Nothing of this name is read in ${folder}; move it or rename it.`,
  duplicate: ({ kind, id, first }) => `The ${kind} ${id} is already written at ${first}; keep one.`,
  'unknown-id': ({ kind, id, near }) =>
    `There is no ${kinds[kind]} ${id}.${meant(near)}${near === null && homes[kind] !== undefined ? ` Write it in ${homes[kind]} or name another.` : ''}`,
  'unknown-value': ({ fact, value, near }) => `${fact} is never ${value}.${meant(near)}`,
  'cell-kind': ({ fact, wants }) =>
    wants === 'interval'
      ? `${fact} is a number: write { from | above, to | below: FIGURE } or [unknown].`
      : `${fact} is no number: write a list of values or { none: [values] }.`,
  'interval-ends': ({ fact }) =>
    `${fact} needs one lower end (from or above), one upper end (to or below), or one of each.`,
  'wrong-unit': ({ figure, unit, wants }) =>
    `The figure ${figure} is in ${unit}; here only ${either(wants)} can be read.`,
  'empty-range': ({ from, to }) => `Nothing lies between ${from} and ${to}; look at the two figures.`,
  digits: ({ key, digits }) =>
    `Digits in "${key}" (… ${digits} …): name a figure as {figure:ID}, or say it in words.`,
  'stray-brace': ({ key, found }) => `A brace in "${key}" (… ${found} …) is no {figure:ID}.`,
  'then-form': ({ decision, wants, found }) =>
    `A rule of ${decision} does ${wants}, and this one has ${found}.`,
  'level-form': ({ wants, found }) =>
    wants.length === 0
      ? `Rules of this decision take no level; leave out "${found}".`
      : `Rules of this decision take the level ${either(wants)}${found === null ? '' : `, not ${found}`}.`,
  'known-better': ({ work, known, claimed }) =>
    `This is marked ${claimed}, but the work ${work} is known as ${known}: a mark is never raised on the way.`,
  'standing-place': ({ work }) => `${work} never has a place; write place: null.`,
  'override-self': ({ rule }) => `The rule ${rule} overrides itself; leave that out.`,
  cycle: ({ ids }) =>
    `These decisions wait for each other: ${[...ids, ids[0]].join(' reads ')}. Break the circle.`,
  'text-missing': ({ rule }) => `The plan prints the rule ${rule}, so it needs a "text".`,
  'too-many-facts': ({ decision, count, most }) =>
    `${decision} reads ${count} facts and ${most} is the most; put a decision of its own before it.`,
  'fact-unread': ({ decision, fact }) =>
    `${decision} lists the fact ${fact} and no rule of it reads it; leave it out.`,
  'fact-undeclared': ({ decision, rule, fact }) =>
    `${rule} reads ${fact}, which "facts" of ${decision} does not list.`,
  'field-without-words': ({ field }) => `The record has a field ${field} and the vocabulary no words for it.`,
  'words-without-field': ({ field }) => `The record has no field ${field}; correct the id or leave it out.`,
  'value-without-words': ({ field, value }) =>
    `The record allows ${field} ${value} and the vocabulary has no words for it.`,
  'words-without-value': ({ field, value }) =>
    `The record knows no ${field} ${value}; correct the id or leave it out.`,
  'words-without-code': ({ code }) => `No decision, method or matter ever says ${code}.`,
  'without-source': ({ rule }) =>
    `${rule} has no source that supports it; name one, common-practice or house-rule.`,
  'memory-behind-must': ({ rule }) =>
    `${rule} is a must and only memory backs it; make it a should, with a level where it holds back.`,
  'memory-behind-stop': ({ task }) =>
    `${task} stops the work and only memory backs it; make it a warning.`,
  'memory-figure-in-must': ({ rule, figure }) =>
    `${rule} is a must to the number of ${figure}, which is known from memory; make it a should, with a level where it holds back.`,
  'memory-relaxes': ({ rule, overrides }) =>
    `${rule} is known from memory only and overrides the stricter ${overrides}; memory never lets anybody go ahead.`,
  'figure-unused': ({ figure }) =>
    `Nothing uses the figure ${figure}; use it, say why it is "kept", or take it out.`,
  'work-unused': ({ work }) => `Nothing refers to the work ${work}.`,
  'without-example': ({ rule }) => `${rule} has no example; give the facts and what it gives.`,
  'example-fails': ({ rule, expected, got }) =>
    `The example of ${rule} should give ${expected} and gives ${got}.`,
  'example-fact': ({ rule, fact }) =>
    `The example of ${rule} gives ${fact}, which its decision does not read.`,
  'fixed-answers': ({ decision, wants, found }) =>
    `${decision} answers ${wants.join(', ')} in this order, strictest first; it has ${found.length === 0 ? 'none' : found.join(', ')}.`,
  'answer-never-given': ({ decision, answer }) => `No rule of ${decision} ever answers ${answer}.`,
  'stop-not-silent': ({ decision }) =>
    `${decision} has stops, which need a recorded fact: write absent: silent.`,
  'objection-uncalled': ({ decision }) =>
    `${decision} is protective and would object to what nobody proposed: write called-for-by: [proposed].`,
  'stop-unread': ({ code }) =>
    `The stop ${code} makes nothing urgent: the rules of urgency that answer "now" must read it.`,
  gap: ({ decision, facts: pairs, more }) =>
    `No rule of ${decision} holds for ${facts(pairs)}${more === 0 ? '' : ` (and ${more} more such gaps)`}; write one, or say so under not-covered.`,
  'gap-too-wide': ({ decision, cells }) =>
    `${decision} is too wide to prove (${cells} cells); let it read fewer facts.`,
  uncovered: ({ decision, fact, value }) =>
    `No rule of ${decision} can speak for ${fact} ${value}; write one, or say so under not-covered.`,
  conflict: ({ rules, facts: pairs }) =>
    `${rules[0]} and ${rules[1]} both hold for ${facts(pairs)} and answer differently; let one override the other or part them.`,
  'never-holds': ({ rule, fact }) => `${rule} can never hold: ${fact} leaves it nothing.`,
  'always-overridden': ({ rule, by }) =>
    `${rule} never speaks: wherever it holds ${listWords(by)} overrides it.`,
  ...evidenceSentences,
}

/** `content/figures/iron.yaml:12  error  …` */
export function flawLine(flaw: Flaw): string {
  return `${flaw.file}:${flaw.line}  ${flaw.severity}  ${flawSentence(flaw)}`
}

export function flawSentence(flaw: Flaw): string {
  const say = sentences[flaw.code] as (about: Flaw['about']) => string
  return say(flaw.about)
}
