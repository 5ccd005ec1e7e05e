import { describe, expect, test } from 'vitest'
import { compile } from '../../lib/knowledge/compile/compile.ts'
import type { SourceFile } from '../../lib/knowledge/compile/document.ts'
import { correctEvidence } from '../../lib/services/correct-evidence.ts'
import { matterSheet } from '../../lib/services/knowledge-sheet.ts'
import { correctionFaultWords, correctionWords } from '../../lib/wording/corrections.ts'
import { evidenceFiles } from './small-evidence.ts'

const file = 'content/evidence/white-skin.yaml'
const content: readonly SourceFile[] = Object.entries(evidenceFiles).map(([name, text]) => ({
  file: `content/${name}`,
  text,
}))
const before = content.find((one) => one.file === file)!.text

const sheet = (files = content): string => {
  const { knowledge } = compile(files)
  return matterSheet(knowledge.matters['white-skin']!, knowledge, 'csv')
}
const bytes = (text: string) => new TextEncoder().encode(text)
const whenRead = (text: string, files = content) => correctEvidence(files, bytes(text))

interface Edit {
  readonly cell: string
  readonly grade: string
  readonly because?: string
  readonly source?: string
  readonly by?: string
  readonly on?: string
}

/** The printed table as a specialist sends it back. */
function edited(...edits: readonly Edit[]): string {
  return sheet()
    .split('\r\n')
    .map((line) => {
      const edit = edits.find(({ cell }) => line.startsWith(`white-skin,${cell},`))
      if (edit === undefined) return line
      const cells = line.split(',')
      cells[4] = edit.grade
      cells[5] = edit.because ?? 'Seen so on the bench'
      if (edit.source !== undefined) cells.splice(6, 3, ...edit.source.split('|'))
      cells[9] = edit.by ?? 'AB'
      cells[10] = edit.on ?? '2026-11-25'
      return cells.join(',')
    })
    .join('\r\n')
}

function taken(text: string, files = content) {
  const made = whenRead(text, files)
  if (!made.ok) throw new Error(JSON.stringify(made))
  const changed = new Map(made.files.map((one) => [one.file, one]))
  return { ...made, after: files.map((one) => changed.get(one.file) ?? one) }
}

const faults = (text: string): string[] => {
  const made = whenRead(text)
  return made.ok ? [] : made.faults.map(correctionFaultWords)
}

const ofBlock = { cell: 'skin-edge,lifting-edge,tinning', grade: 'occasional' }

describe('a corrected table', () => {
  test('left as it was printed changes nothing', () => {
    expect(whenRead(sheet())).toEqual({ ok: true, files: [], changes: [] })
  })

  test('changes the one grade in its file and leaves all else to the letter', () => {
    const { files, changes } = taken(edited(ofBlock))
    expect(changes.map(correctionWords)).toEqual([
      'white-skin, skin-edge, lifting-edge: tinning from rare to occasional, because Seen so on the bench (AB, 2026-11-25)',
    ])
    expect(files.map((one) => one.file)).toEqual([file])
    const lines = files[0]!.text.split('\n')
    const old = before.split('\n')
    const line =
      '        fits: { tinning: occasional, silvering: frequent, active-chloride-corrosion: rare }  # by eye'
    expect(lines.filter((one) => !old.includes(one))).toEqual([
      line,
      '        corrected: [{ rival: tinning, from: rare, to: occasional, because: "Seen so on the bench", work: read-1999, place: "p. 1", known: read, by: "AB", on: 2026-11-25 }]',
    ])
    expect(old.filter((one) => !lines.includes(one))).toEqual([line.replace('occasional', 'rare')])
  })

  test('brings its source along where the state has not got it, in either way of writing', () => {
    const source = 'quoted-1998|p. 9|second-hand'
    const made = taken(
      edited(
        { ...ofBlock, source },
        { cell: 'skin-edge,thin-edge,silvering', grade: 'frequent', source },
        { cell: 'skin-edge,rest,tinning', grade: 'frequent', source },
      ),
    )
    const { flaws, knowledge } = compile(made.after)
    expect(flaws).toEqual([])
    const [group] = knowledge.matters['white-skin']!.groups
    expect(group!.states.map(({ sources }) => sources.map(({ work }) => work))).toEqual([
      ['quoted-1998', 'read-1999'],
      ['remembered-1997', 'quoted-1998'],
    ])
    expect(group!.rest.fits['tinning']).toBe('frequent')
    expect(made.files[0]!.text).toContain('# Kept to the letter.')
  })

  test('taken a second time changes nothing, nor does one corrected again keep less', () => {
    const first = taken(edited(ofBlock))
    expect(whenRead(edited(ofBlock), first.after)).toEqual({ ok: true, files: [], changes: [] })
    const again = sheet(first.after).replace(
      /(skin-edge,lifting-edge,tinning),occasional,,(.*?),,,occasional/,
      '$1,frequent,Many more,$2,CD,2026-12-01,occasional',
    )
    const second = taken(again, first.after)
    expect(second.changes).toHaveLength(1)
    expect(second.files[0]!.text).toMatch(
      /by: "AB", on: 2026-11-25 }, { rival: tinning, from: occasional, to: frequent/,
    )
    expect(compile(second.after).flaws).toEqual([])
  })

  test('saved with semicolons reads the same', () => {
    const text = edited(ofBlock)
      .split('\r\n')
      .map((line) => line.replaceAll(',', ';'))
      .join('\r\n')
    expect(taken(text.replaceAll('"', '')).changes).toHaveLength(1)
  })

  test('without the column of what was printed is held against the content itself', () => {
    const text =
      'matter,group,state,rival,grade,because,work,place,known,by,on\nwhite-skin,skin-edge,rest,tinning,rare,So,house-rule,,common-practice,AB,2026-11-25\n'
    expect(taken(text).changes).toMatchObject([{ from: 'occasional', to: 'rare', place: null }])
  })
})

describe('a corrected table is refused as a whole, with everything that is wrong', () => {
  test('names that are not there', () => {
    const text = [
      'matter,group,state,rival,grade,because,work,place,known,by,on',
      'white-skim,skin-edge,rest,tinning,rare,So,house-rule,,common-practice,AB,2026-11-25',
      'white-skin,skin-egde,rest,tinning,rare,So,house-rule,,common-practice,AB,2026-11-25',
      'white-skin,skin-edge,thick-edge,tinning,rare,So,house-rule,,common-practice,AB,2026-11-25',
      'white-skin,skin-edge,rest,tininng,rare,So,house-rule,,common-practice,AB,2026-11-25',
      'white-skin,skin-edge,rest,tinning,often,So,house-rule,,common-practice,AB,2026-11-25',
      'white-skin,skin-edge,rest,silvering,rare,,read-1990,p. 1,seen,,25.11.2026',
    ].join('\n')
    expect(faults(text)).toEqual([
      'Row 2: There is no matter “white-skim”. Did you mean white-skin?',
      'Row 3: There is no group “skin-egde”. Did you mean skin-edge?',
      'Row 4: There is no state “thick-edge”. Did you mean thin-edge?',
      'Row 5: There is no rival “tininng”. Did you mean tinning?',
      'Row 6: There is no grade “often”.',
      'Row 7: A changed grade needs “because”: why, by whom, and on which day.',
      'Row 7: A changed grade needs “by”: why, by whom, and on which day.',
      'Row 7: There is no work “read-1990”. Did you mean read-1999?',
      'Row 7: There is no known “seen”.',
      'Row 7: “25.11.2026” is not a day. Write it as year-month-day.',
    ])
  })

  test('a grade that somebody changed after the table was printed', () => {
    const printed = edited(ofBlock)
    const { after } = taken(edited({ ...ofBlock, grade: 'typical' }))
    const made = whenRead(printed, after)
    expect(made).toMatchObject({
      ok: false,
      faults: [{ code: 'changed-meanwhile', printed: 'rare', now: 'typical' }],
    })
  })

  test('two rows for one place', () => {
    const row = (grade: string) =>
      `white-skin,skin-edge,rest,tinning,${grade},So,house-rule,,common-practice,AB,2026-11-25`
    const text = `matter,group,state,rival,grade,because,work,place,known,by,on\n${row('rare')}\n${row('typical')}\n`
    expect(faults(text)).toEqual(['Row 3: Row 2 gives the same place another grade. Leave only one of them.'])
  })

  test('what the content would be at fault for', () => {
    const clears = edited({
      cell: 'skin-minerals,rest,active-chloride-corrosion',
      grade: 'rare',
      source: 'house-rule||common-practice',
    })
    expect(whenRead(clears)).toMatchObject({ ok: false, flaws: [{ code: 'negative-clears', file }] })
    const better = edited({ ...ofBlock, source: 'remembered-1997|p. 1|read' })
    expect(whenRead(better)).toMatchObject({
      ok: false,
      faults: [],
      flaws: [{ code: 'known-better' }, { code: 'known-better' }],
    })
  })

  test('columns that are missing, quotes that do not close', () => {
    expect(whenRead('matter,group,state\nwhite-skin,skin-edge,rest\n')).toMatchObject({
      ok: false,
      missing: ['rival', 'grade', 'because', 'work', 'place', 'known', 'by', 'on'],
    })
    expect(whenRead(edited({ ...ofBlock, because: '"Open' }))).toMatchObject({ ok: false })
  })
})
