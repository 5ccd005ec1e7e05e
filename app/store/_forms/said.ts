/** What became of a form that was sent: kept, or what is to be mended; whatever was given comes back with it. */
export interface Said {
  readonly ok: boolean
  readonly says: string
  /** By the name of the field: what is wrong there and what to do. */
  readonly wrong: Readonly<Record<string, string>>
  readonly given: Readonly<Record<string, string>>
}

export type FormAction = (before: Said | null, form: FormData) => Promise<Said>

export const kept = (says: string): Said => ({ ok: true, says, wrong: {}, given: {} })
