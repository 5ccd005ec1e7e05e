import { describe, expect, it } from 'vitest'
import { moreName, packAsked } from '../../../app/store/pack/pack-asked.ts'

describe('what the address of a packing asks for', () => {
  it('is as it stands, with the boxes there are, unless it says otherwise', () => {
    expect(packAsked('p', {})).toEqual({ projectId: 'p', begin: 'as-it-stands', more: [], longer: false })
    expect(packAsked('p', { begin: 'sideways' }).begin).toBe('as-it-stands')
    expect(packAsked('p', { begin: 'afresh', longer: '1' })).toMatchObject({ begin: 'afresh', longer: true })
  })

  it('has more boxes of a make by the name of one, as many as are believable', () => {
    const words = {
      [moreName('TW-B01')]: '3',
      [moreName('TW B 2')]: '9999',
      [moreName('C')]: 'many',
      [moreName('D')]: '-1',
      other: '4',
    }
    expect(packAsked('p', words).more).toEqual([
      { like: 'TW-B01', count: 3 },
      { like: 'TW B 2', count: 500 },
    ])
  })
})
