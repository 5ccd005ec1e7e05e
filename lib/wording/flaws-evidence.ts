import type { FlawAbout } from '../knowledge/flaw.ts'
import { listWords } from './list.ts'

type Code =
  | 'matter-file'
  | 'harm-differs'
  | 'one-of'
  | 'grade-missing'
  | 'prior-order'
  | 'prior-covered'
  | 'state-when'
  | 'state-covered'
  | 'state-unmeasured'
  | 'by-differs'
  | 'same-cause'
  | 'standing-answer'
  | 'energies-fall'
  | 'fractions-sum'
  | 'grade-without-source'
  | 'memory-rules-out'
  | 'negative-clears'
  | 'evidence-unexplained'
  | 'counted-twice'
  | 'group-tells-nothing'
  | 'rivals-alike'
  | 'matter-size'
  | 'question-unused'
  | 'answer-unread'
  | 'looks-differ'

const either = (wants: readonly string[]): string => listWords(wants, 'or')

/** What is wrong with methods and the evidence base, and what to do about it. */
export const evidenceSentences: { readonly [One in Code]: (about: FlawAbout[One]) => string } = {
  'matter-file': ({ matter, expected }) =>
    `The matter ${matter} stands in ${expected}.yaml; name file and matter alike.`,
  'harm-differs': ({ method, harm, key }) =>
    key === 'sampling'
      ? `${method} does "${harm}" to the object and "sampling" says otherwise; let both agree.`
      : `${method} does "${harm}" to the object, which needs the owner's leave: write leave: true.`,
  'one-of': ({ wants, found }) =>
    `Write just one of ${either(wants)} here; there ${found.length === 0 ? 'is none' : `stand ${listWords(found)}`}.`,
  'grade-missing': ({ at, rival }) =>
    `${at} says nothing of ${rival}: a grade for every rival, excluded where it is never so.`,
  'prior-order': ({ rival, last }) =>
    last
      ? `The last odds of ${rival} hold only under conditions; leave out "when", so that there are odds for every find.`
      : `These odds of ${rival} hold always, and those after them never count; give them a "when" or let them be the last.`,
  'prior-covered': ({ rival, at }) =>
    `These odds of ${rival} never count: wherever they hold those in place ${at} hold before them. Put them first or part the two.`,
  'state-when': ({ state, question }) =>
    question === null
      ? `${state} says nothing of when it holds; write "when".`
      : `${state} is an answer of ${question}; leave out "when".`,
  'state-covered': ({ state, by }) =>
    `${state} never counts: wherever it holds ${by} holds before it. Put it first or part the two.`,
  'state-unmeasured': ({ state, by, wants }) =>
    wants.length === 0
      ? `${state} is found by ${by}, whose results the record keeps only as answers; give the group a "question".`
      : `${state} is found by ${by} and reads no result of it; let "when" read ${either(wants)}.`,
  'by-differs': ({ group, by, question, of }) =>
    `${group} is found by ${by} and its question ${question} by ${of}; let both say the same.`,
  'same-cause': ({ group, as, wrong }) =>
    ({
      paired: `${as} has a twin already; ${group} cannot be another.`,
      'one-method': `${group} and ${as} are found by one method; make them one group.`,
      'nothing-shared': `${group} and ${as} share no state; give states that tell the same one id.`,
    })[wrong],
  'standing-answer': ({ answer }) => `${answer} is an answer of every question; leave it out.`,
  'energies-fall': ({ element, from, to }) =>
    `The energies of ${element} fall from ${from} to ${to}; they rise, and only an edge stands twice.`,
  'fractions-sum': ({ matrix, sum }) =>
    `The mass fractions of ${matrix} sum to ${sum}; they must sum to one.`,
  'grade-without-source': ({ of }) =>
    `${of} has no source that supports it; name one, common-practice or house-rule.`,
  'memory-rules-out': ({ state, rival }) =>
    `${state} excludes ${rival} and only memory backs it; what is only remembered rules nothing out. Grade it rare.`,
  'negative-clears': ({ state, rival, grade }) =>
    `${state} is what a test shows that found nothing, and grades ${rival} ${grade}; such a test never clears an object. Grade it occasional or above.`,
  'evidence-unexplained': ({ evidence }) => `No matter explains ${evidence}; write one in content/evidence.`,
  'counted-twice': ({ matter, fact, first, second }) =>
    `In ${matter} both ${first} and ${second} read ${fact}, which would count twice; read it in one of them.`,
  'group-tells-nothing': ({ group }) =>
    `${group} grades every explanation alike and tells none from another; grade it anew or leave it out.`,
  'rivals-alike': ({ matter, rivals }) =>
    `In ${matter} nothing tells ${rivals[0]} from ${rivals[1]}; add a group that does, or let them be one.`,
  'matter-size': ({ matter, part, count, least, most }) =>
    `${matter} has ${count} ${part}; between ${least} and ${most} can be weighed and read.`,
  'question-unused': ({ question }) => `Nothing reads the answers to ${question}; use them or take it out.`,
  'answer-unread': ({ question, answer }) =>
    `Nothing reads the answer ${answer} of ${question}; it counts as none of the others.`,
  'looks-differ': ({ question, answer, missing }) => {
    const what = answer === null ? `the question ${question}` : `the answer ${answer} of ${question}`
    return missing === 'record'
      ? `The record does not take ${what}; write it in lib/record/looks.`
      : `The record takes ${what} and content/questions has no words for it.`
  },
}
