import { render, screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { confusedKeys } from '../../../app/_drawings/confused.ts'
import { LookAlikes } from '../../../app/_drawings/look-alikes.tsx'
import { valuesOf } from './on-a-page.ts'

describe('look-alikes', () => {
  it('begins with the thing itself, then what it is taken for, three at most', () => {
    const word = {
      id: 'orange-droplets',
      confusedWith: ['dry-orange-blisters', 'bright-orange-spots', 'salt-bloom'],
    }
    expect(confusedKeys('seen', word)).toEqual([
      'seen/orange-droplets',
      'seen/dry-orange-blisters',
      'seen/bright-orange-spots',
    ])
  })

  it('leaves out what is not drawn', () => {
    expect(confusedKeys('seen', { id: 'grey-skin', confusedWith: ['something-new'] })).toEqual([
      'seen/grey-skin',
    ])
  })

  it.each(['seen', 'evidence'] as const)(
    'has a partner for every value of %s that is confused with another',
    (field) => {
      for (const { id, 'confused-with': confusedWith = [] } of valuesOf(field))
        expect(confusedKeys(field, { id, confusedWith }).length, id).toBe(
          Math.min(1 + confusedWith.length, 3),
        )
    },
  )

  it('sets each drawing over its own words, and passes the drawing over', () => {
    render(
      <LookAlikes
        keys={['seen/orange-droplets', 'seen/dry-orange-blisters', 'seen/not-drawn']}
        words={(key) => ({
          label: `Label of ${key}`,
          ...(key.endsWith('blisters') ? { tell: 'Hollow and dry.' } : {}),
        })}
        beside={(key) => <button type="button">Take {key}</button>}
      />,
    )
    const items = screen.getAllByRole('listitem')
    expect(items).toHaveLength(3)
    const blisters = within(items[1] as HTMLElement)
    expect(blisters.getAllByText(/Label of seen\/dry-orange-blisters|Hollow and dry/)).toHaveLength(2)
    expect(blisters.getAllByRole('button', { name: 'Take seen/dry-orange-blisters' })).toHaveLength(1)
    expect(items.map((item) => item.querySelectorAll('svg[aria-hidden="true"]').length)).toEqual([1, 1, 0])
    expect(screen.queryByRole('img')).toBeNull()
  })
})
