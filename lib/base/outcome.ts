/** What a step gives back that may fail on its input: the value, or every problem it found. */
export type Outcome<Value, Failure> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: Failure }

export function given<Value>(value: Value): Outcome<Value, never> {
  return { ok: true, value }
}

export function refused<Failure>(problems: Failure): Outcome<never, Failure> {
  return { ok: false, problems }
}
