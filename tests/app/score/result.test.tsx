import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test } from 'vitest'
import { FoundOut } from '../../../app/finds/[id]/identify/found.tsx'
import { resultRead } from '../../../app/finds/[id]/identify/read-result.ts'
import { ResultForm } from '../../../app/finds/[id]/identify/result-form.tsx'
import {
  foundQuestion,
  methodsOf,
  reportQuestions,
  sourceQuestions,
} from '../../../app/finds/[id]/identify/result-questions.ts'
import { Told } from '../../../app/finds/[id]/identify/told.tsx'
import { formReader } from '../../../app/store/_forms/read-form.ts'
import type { FormAction } from '../../../app/store/_forms/said.ts'
import type { Identification } from '../../../lib/services/identification.ts'
import { stoodOf } from '../../../lib/wording/standing.ts'
import { day } from '../../database/samples.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const today = day('2026-11-25')
const skin = knowledge.matters['white-skin']!

function read(given: Readonly<Record<string, string>>) {
  const form = new FormData()
  const all = { find: 'f1', component: 'plate', byWhom: 'The laboratory', on: '2026-11-20', ...given }
  for (const [name, text] of Object.entries(all)) form.set(name, text)
  const reader = formReader(form)
  return { result: resultRead(reader, today), wrong: reader.wrong }
}

describe('what a report is asked for', () => {
  test('is what the record keeps of its method, in the words of the evidence base, and the questions it answers', () => {
    expect(methodsOf(skin)).toEqual(expect.arrayContaining(['xrf', 'xrd', 'sem-eds']))
    const [elements] = reportQuestions(skin, 'xrf', knowledge)
    expect(elements).toMatchObject({ name: 'report.xrf', kind: 'text' })
    expect(elements!.hint).toContain('tin was found, and no silver')
    const section = reportQuestions(skin, 'sem-eds', knowledge)
    expect(section.length).toBeGreaterThan(0)
    expect(section.every(({ name }) => name.startsWith('look.'))).toBe(true)
    const [phases] = reportQuestions(skin, 'xrd', knowledge)
    expect(phases).toMatchObject({ kind: 'ticks', name: 'tick.xrd' })
    expect(JSON.stringify(phases)).toContain('"value":"cu3sn","label":"Cu3Sn"')
    expect(reportQuestions(skin, '', knowledge)).toEqual([])
  })
  test('offers every explanation, none of them, and that it is not settled', () => {
    const values = foundQuestion(skin, knowledge).options!.map(({ value }) => value)
    expect(values).toEqual(['', ...skin.rivals.map(({ id }) => id), 'none-of-these'])
  })
  test.each(Object.values(knowledge.matters).map((matter) => [matter.id, matter] as const))(
    'is something, for every method of %s',
    (_, matter) => {
      expect(
        methodsOf(matter).filter((method) => reportQuestions(matter, method, knowledge).length === 0),
      ).toEqual([])
    },
  )
})

describe('a result as it was typed', () => {
  test.each([
    [{ method: 'xrf', 'report.xrf': 'cu, sn pb' }, ['xrf:Cu+Sn+Pb']],
    [
      { method: 'xrd', 'tick.xrd.cassiterite': 'on', 'report.xrd': 'calcium carbonate; Quartz' },
      ['xrd:cassiterite+calcium-carbonate+quartz'],
    ],
    [{ method: 'raman', 'tick.raman.none': 'on' }, ['raman:none']],
    [
      { method: 'x-radiography', 'tick.radiograph.bright-lines': 'on', 'tick.radiograph.core-solid': 'on' },
      ['radiograph:bright-lines', 'radiograph:core-solid'],
    ],
    [
      {
        method: 'chloride-test',
        'report.silver-nitrate': 'positive',
        'report.residual-chloride-ppm': '12,5',
      },
      ['silver-nitrate:positive', 'residual-chloride-ppm:12.5'],
    ],
    [{ method: 'sem-eds', 'look.skin-section': 'none', 'look.other': '' }, ['skin-section:none']],
  ])('%o is read', (given, report) => {
    const { result, wrong } = read(given)
    expect(wrong).toEqual({})
    expect(result.report).toEqual(report)
  })
  test('says what is wrong with it, all at once', () => {
    expect(
      read({
        method: 'xrf',
        'report.xrf': 'copper',
        byWhom: '',
        on: '2027-01-01',
        reference: 'x'.repeat(121),
      }).wrong,
    ).toEqual({
      'report.xrf': expect.stringContaining('“copper”'),
      byWhom: 'Say whose result it is.',
      on: 'This day has not come yet.',
      reference: 'This is too long: 120 signs at most.',
    })
    expect(read({ method: 'xrd', 'tick.xrd.none': 'on', 'report.xrd': 'tenorite' }).wrong).toHaveProperty(
      'tick.xrd',
    )
    expect(
      read({ method: 'x-radiography', 'tick.radiograph.unknown': 'on', 'tick.radiograph.no-core': 'on' })
        .wrong,
    ).toHaveProperty('tick.radiograph')
    expect(read({ method: 'xrf', matter: 'white-skin' }).wrong).toHaveProperty('found')
    expect(read({ method: 'xrf' }).wrong).toHaveProperty('words')
  })
  test('names what it then is only where somebody says so', () => {
    const given = { method: 'xrf', matter: 'white-skin', 'report.xrf': 'Cu Sn' }
    expect(read(given).result.found).toBeNull()
    expect(read({ ...given, found: 'tinning' }).result.found).toEqual({
      matter: 'white-skin',
      interpretation: 'tinning',
    })
  })
})

test('the form keeps what was given, and lists what is wrong with links to it', async () => {
  const refusing: FormAction = (_before, form) =>
    Promise.resolve({
      ok: false,
      says: '2 answers need another look.',
      wrong: { byWhom: 'Say whose result it is.', 'tick.xrd': 'Not both.' },
      given: formReader(form).given(),
    })
  render(
    <ResultForm
      action={refusing}
      hidden={{ find: 'f1' }}
      report={reportQuestions(skin, 'xrd', knowledge)}
      found={[foundQuestion(skin, knowledge)]}
      source={sourceQuestions(today)}
    />,
  )
  await userEvent.click(screen.getByLabelText('Nothing that could be named'))
  await userEvent.type(screen.getByLabelText('What else was found'), 'tenorite')
  await userEvent.selectOptions(screen.getByLabelText(/^What is the white metal skin, then/), 'tinning')
  await userEvent.click(screen.getByRole('button', { name: 'Keep this result' }))
  const links = (await screen.findAllByRole('link')).map((link) => link.getAttribute('href'))
  expect(links).toEqual(['#result-tick.xrd', '#result-byWhom'])
  expect(screen.getByLabelText<HTMLInputElement>('Nothing that could be named').checked).toBe(true)
  expect(screen.getByLabelText<HTMLInputElement>('What else was found').value).toBe('tenorite')
  expect(screen.getByLabelText<HTMLSelectElement>(/^What is the white metal skin, then/).value).toBe(
    'tinning',
  )
})

const rivals = [
  { interpretation: 'tinning', probability: 0.3, range: [0.2, 0.5] },
  { interpretation: 'silvering', probability: 0.6, range: [0.4, 0.8] },
] as const

const identification = {
  id: 'i1',
  given: {
    component: 'plate',
    matter: 'white-skin',
    interpretation: 'tinning',
    method: 'xrf',
    on: day('2026-11-20'),
    byWhom: 'The laboratory',
    reference: 'R 7',
    words: 'Three spots.',
  },
  thought: { rivals, observed: [] },
  by: { name: 'Bo Lathe', role: 'conservator', device: 'bench computer' },
} as unknown as Identification

describe('what was thought before', () => {
  const now = stoodOf(
    rivals.map((one) => ({
      ...one,
      component: 'plate',
      matter: 'white-skin',
      about: 'white-metal-sheen',
      says: '',
      standing: 'open' as const,
      for: [],
      against: [],
    })),
  )[0]!
  test('stands beside what is thought now once a result is kept', () => {
    render(<Told id="f1" kept="now" before={rivals} now={now} found={undefined} knowledge={knowledge} />)
    expect(screen.getByRole('status').textContent).toMatch(/^Nobody has said yet what it is\./)
    expect(screen.getByRole('row', { name: /^Tinning/ }).textContent).toContain('about 3 in 10 (2 to 5)')
    expect(screen.getByRole('link', { name: /Back to the find/ }).getAttribute('href')).toBe('/finds/f1')
  })
  test('is told as plainly where it was wrong', () => {
    render(<Told id="f1" kept="now" before={rivals} now={now} found={identification} knowledge={knowledge} />)
    expect(screen.getByRole('status').textContent).toBe(
      'It was found to be tinning. Something else stood in front before; this was put at about 3 in 10 (2 to 5).',
    )
    expect(screen.getByRole('row', { name: /^Tinning/ }).textContent).toContain('it is this')
  })
  test('stays with every answer of the find; one that was overruled says so, an invented one too', () => {
    const later = {
      ...identification,
      id: 'i2',
      given: { ...identification.given, interpretation: 'none-of-these', method: '' },
    }
    render(<FoundOut identifications={[identification, later]} severalParts invented knowledge={knowledge} />)
    expect(screen.getByText('invented')).toBeTruthy()
    const [newest, oldest] = screen.getAllByRole('listitem').map((item) => item.textContent)
    expect(newest).toContain('None of the explanations listed.')
    expect(newest).toContain('Judged from all that is known')
    expect(oldest).toContain('Somebody found otherwise later')
    expect(oldest).toContain(
      'Before, it was thought: silvering, about 6 in 10 (4 to 8); tinning, about 3 in 10 (2 to 5).',
    )
  })
})
