import { compile, type Compiled } from '../../lib/knowledge/compile/compile.ts'
import type { Base } from '../../lib/analysis/base.ts'
import type { Flaw, FlawCode } from '../../lib/knowledge/flaw.ts'
import { checkKnowledge } from '../../lib/services/check-knowledge.ts'

/** A small invented content without a flaw of its own; a test changes one thing in it. The numbers mean nothing. */
export const files: Readonly<Record<string, string>> = {
  'works/standing.yaml': `
- { id: common-practice, authors: [], year: null, title: Common practice, known: common-practice }
- { id: house-rule, authors: [], year: null, title: House rule, known: common-practice }
`,
  'works/invented.yaml': `
- { id: read-1999, authors: [A. Reader], year: 1999, title: Seen, known: read }
- { id: quoted-1998, authors: [B. Quoted], year: 1998, title: Quoted, known: second-hand }
- { id: remembered-1997, authors: [C. Remembered], year: 1997, title: Remembered, known: memory }
`,
  'figures/invented.yaml': `
- id: iron-ceiling
  says: An invented ceiling
  quantity: relative-humidity
  value: 20
  as-printed: "20 %"
  unit: percent
  valid-for: nothing
  source: { work: read-1999, place: p. 1 }
  known: read
  certainty: supported
- id: damp-limit
  says: An invented limit
  quantity: relative-humidity
  value: 60
  as-printed: "60"
  unit: percent
  valid-for: nothing
  source: { work: quoted-1998, place: p. 2 }
  known: second-hand
  certainty: opinion
- id: remembered-ceiling
  says: A remembered ceiling
  quantity: relative-humidity
  value: 45
  as-printed: "45 %"
  unit: percent
  valid-for: nothing
  source: { work: remembered-1997, place: null }
  known: memory
  certainty: opinion
- id: round
  says: An invented round
  quantity: duration
  value: 1
  as-printed: "1"
  unit: day
  valid-for: nothing
  source: { work: read-1999, place: p. 3 }
  known: read
  certainty: supported
  kept: for the round
`,
  'vocabulary/units.yaml': `
- { id: percent, label: percent, printed: "%" }
- { id: day, label: days, printed: days, one: day }
- { id: month, label: months, printed: months }
`,
  'vocabulary/contacts.yaml': `
- { id: conservator, label: conservator, means: the one on call }
`,
  'vocabulary/codes.yaml': `
- { id: active, label: active, means: going on }
- { id: quiet, label: quiet, means: at rest }
- { id: iron-kept-dry, label: keep dry, means: keep it dry }
`,
  'decisions/activity.yaml': `
decision: activity
asks: Is it corroding?
each: component
policy: strictest
answers: [active, quiet]
absent: protective
facts: [core, stored_rh_percent]
rules:
  - id: damp
    title: Damp metal corrodes
    when: { stored_rh_percent: { above: damp-limit } }
    then: { answer: active }
    strength: should
    certainty: supported
    because: Above {figure:damp-limit} it goes on.
    sources: [{ work: quoted-1998, place: p. 2, says: supports, known: second-hand }]
    examples: [{ given: { stored_rh_percent: 70 }, gives: { answer: active } }]
  - id: dry-metal
    title: Dry metal rests
    when: { core: [solid, partial], stored_rh_percent: { to: damp-limit } }
    then: { answer: quiet }
    strength: should
    certainty: supported
    because: It rests.
    sources: [{ work: common-practice, place: null, says: supports, known: common-practice }]
    examples: [{ given: { core: solid, stored_rh_percent: 30 }, gives: { answer: quiet } }]
not-covered:
  - when: { core: [none] }
    what: Crusts without metal
    because: There is nothing left to corrode.
`,
  'decisions/storage-humidity.yaml': `
decision: storage-humidity
asks: How dry?
each: component
policy: strictest
fills: storage.rh
absent: protective
facts: [activity]
rules:
  - id: going-on
    title: Kept dry
    when: { activity: [active] }
    then: { rh: { to: iron-ceiling } }
    strength: must
    certainty: supported
    text: Keep it at {figure:iron-ceiling} or below.
    because: It corrodes.
    sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
    examples: [{ given: { activity: active }, gives: { rh: { to: 20 } } }]
  - id: at-rest
    title: Kept fairly dry
    when: { activity: [quiet] }
    then: { rh: { to: remembered-ceiling } }
    strength: should
    level: limit
    certainty: opinion
    text: Keep it at {figure:remembered-ceiling} or below.
    because: It may begin again.
    sources: [{ work: remembered-1997, place: null, says: supports, known: memory }]
    examples: [{ given: { activity: quiet }, gives: { rh: { to: 45 } } }]
`,
  'decisions/packing.yaml': `
decision: packing
asks: How is it packed?
each: find
policy: collect
fills: packing
absent: silent
facts: [activity]
rules:
  - id: dry
    title: Keep it dry
    when: { activity: [active] }
    then: { say: iron-kept-dry }
    strength: should
    certainty: opinion
    text: Keep it dry.
    because: It rusts.
    sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]
    examples: [{ given: { activity: active }, gives: { say: iron-kept-dry } }]
`,
}

export type Changes = Readonly<Record<string, string | readonly (readonly [from: string, to: string])[]>>

/** The small content with some files replaced, added, or changed by exact words. */
export function compiled(changes: Changes = {}, content = files): Compiled {
  const changed: Record<string, string> = { ...content }
  for (const [file, change] of Object.entries(changes)) {
    if (typeof change === 'string') changed[file] = change
    else for (const [from, to] of change) changed[file] = replaced(changed[file] ?? '', from, to)
  }
  return compile(Object.entries(changed).map(([file, text]) => ({ file: `content/${file}`, text })))
}

function replaced(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2)
    throw new Error(`"${from}" does not stand just once in the small content`)
  return text.replace(from, () => to)
}

/** The flaws of one kind that compiling gives. */
export function flawsOf<Code extends FlawCode>(
  code: Code,
  changes: Changes,
  content = files,
): Extract<Flaw, { code: Code }>[] {
  return compiled(changes, content).flaws.filter((flaw) => flaw.code === code) as Extract<
    Flaw,
    { code: Code }
  >[]
}

/** What one check has to say of the changed content, which must compile. */
export function found(
  check: (base: Base) => readonly { readonly code: FlawCode; readonly about: unknown }[],
  changes: Changes = {},
  content = files,
) {
  const base = compiled(changes, content)
  const errors = base.flaws.filter(({ severity }) => severity === 'error')
  if (errors.length > 0)
    throw new Error(`The changed content has flaws of its own: ${JSON.stringify(errors)}`)
  return check(base).map(({ code, about }) => ({ code, about }))
}

export function allFlaws(changes: Changes = {}): readonly Flaw[] {
  return checkKnowledge(compiled(changes), {})
}
