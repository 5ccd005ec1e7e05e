/** What else fields are called as headings (label and trade habit), by field; their ids always match. */
export type FieldNames = Readonly<Record<string, readonly string[]>>

/** What else values are called (label), by field and id; their ids always match. */
export type ValueNames = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>

export interface Names {
  readonly fields: FieldNames
  readonly values: ValueNames
}

export const noNames: Names = { fields: {}, values: {} }
