import type { IsoDate } from '../base/calendar.ts'

/** Days on which a find lay in a box, both included. From null: ever since it is known; to null: it is there still. */
export interface FindStay {
  readonly findId: string
  readonly box: string
  readonly from: IsoDate | null
  readonly to: IsoDate | null
}
