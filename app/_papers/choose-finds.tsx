import type { ReactNode } from 'react'

interface Props {
  readonly words: Readonly<Record<string, string>>
  readonly children?: ReactNode
}

/** Which finds a sheet is for. */
export function ChooseFinds({ words, children }: Props) {
  return (
    <form className="row no-print" role="search">
      <div className="field">
        <label htmlFor="q">Context, object, number or material</label>
        <input id="q" name="q" type="search" defaultValue={words['q']} />
      </div>
      <div className="field">
        <label htmlFor="box">Box</label>
        <input id="box" name="box" defaultValue={words['box']} />
      </div>
      {children}
      <button className="button first">Make the sheet</button>
    </form>
  )
}
