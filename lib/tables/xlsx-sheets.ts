/** A sheet as it comes out of the worker: texts only, rows counted from the top of the sheet. */
export interface Sheet {
  readonly name: string
  readonly rows: readonly (readonly string[])[]
  /** Row and column, from 0, of formulas whose value was never worked out. */
  readonly formulas: readonly (readonly [number, number])[]
}

export type WorkbookRead =
  | { readonly ok: true; readonly sheets: readonly Sheet[] }
  | {
      readonly ok: false
      readonly code: 'unsafe-workbook' | 'broken-workbook' | 'workbook-too-slow'
      readonly found: string
    }
