import type { IsoDate } from '../base/calendar.ts'
import { betweenDaysWords } from './box-renewal.ts'
import { countWords } from './list.ts'

interface Box {
  readonly airChangesFrom: 'logger' | 'rounds' | 'like-boxes' | 'written' | 'assumed' | null
  readonly early: IsoDate | null
  readonly late: IsoDate | null
  readonly finds: number
  readonly model: string | null
}

/** Why a logger would tell more in this box than in another. */
export function logNextWords({ airChangesFrom, early, late, finds, model }: Box): string {
  const unknown =
    airChangesFrom === 'assumed'
      ? `nobody knows how fast its air changes${model === null ? '' : `, nor that of any ${model} here`}`
      : airChangesFrom === null
        ? 'nothing can be told of it yet'
        : 'how fast its air changes is known only roughly'
  const spread =
    early === null
      ? ''
      : late === null
        ? '; its gel may last very short or very long'
        : `; its gel may be due anywhere between ${betweenDaysWords(early, late)}`
  return `${unknown}${spread}; ${countWords(finds, 'find')} depend on it`
}
