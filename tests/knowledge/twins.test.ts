import { describe, expect, test } from 'vitest'
import { compiled, flawsOf, type Changes } from './small-content.ts'
import { evidenceFiles } from './small-evidence.ts'

const of = (written: string): Changes => ({
  'evidence/white-skin.yaml': [['    by: xrf\n', `    by: xrf\n    same-cause-as: ${written}\n`]],
})
const slips = (written: string) => flawsOf('same-cause', of(written), evidenceFiles).map(({ about }) => about)

describe('a group that measures the same thing as another', () => {
  test('names one before it that is there', () => {
    expect(flawsOf('unknown-id', of('skin-egde'), evidenceFiles)).toMatchObject([
      { about: { kind: 'group', id: 'skin-egde', near: 'skin-edge' } },
    ])
  })

  test('shares a state with it, or would count nothing twice', () => {
    expect(slips('skin-edge')).toEqual([{ group: 'skin-elements', as: 'skin-edge', wrong: 'nothing-shared' }])
  })

  test('and where none is named there is none', () => {
    const { knowledge } = compiled({}, evidenceFiles)
    expect(knowledge.matters['white-skin']!.groups.map(({ sameCauseAs }) => sameCauseAs)).not.toContain(
      'skin-edge',
    )
  })
})
