import type { IsoDate } from '../../lib/base/calendar.ts'

/** Gel of the invented store that somebody wrote down, older than what its list of boxes tells; the last of it is that. */
export interface Gel {
  readonly on: IsoDate
  readonly box: string
  readonly kg: number
  readonly kind: string
  readonly rh: number
  readonly removedKg?: number
}

const gel = (on: string, box: string, kg: number, kind: string, rh: number, removedKg?: number): Gel => ({
  on: on as IsoDate,
  box,
  kg,
  kind,
  rh,
  ...(removedKg === undefined ? {} : { removedKg }),
})

export const gels: readonly Gel[] = [
  gel('2021-06-14', 'TW-B04', 1, 'blue indicating', 6),
  gel('2022-03-08', 'TW-B10', 0.5, 'plain', 6),
  gel('2023-01-15', 'TW-B04', 1.5, 'blue indicating', 8, 1),
  gel('2023-05-30', 'TW-B08', 1, 'plain', 5),
  gel('2024-02-19', 'TW-B22', 1, 'orange indicating', 5),
  gel('2024-11-04', 'TW-B05', 0.5, 'plain', 6),
  gel('2025-05-12', 'TW-B10', 0.5, 'plain', 9, 0.5),
  gel('2025-06-28', 'TW-B22', 1.5, 'orange indicating', 6, 1),
  gel('2026-04-25', 'TW-B08', 1.5, 'plain', 7, 1),
  gel('2026-05-12', 'TW-B05', 0.5, 'plain', 5, 0.5),
]
