import Link from 'next/link'
import { Invented } from '../_marks/invented.tsx'
import { DemoButton } from './demo-button.tsx'
import { loadDemo } from './load-demo-action.ts'

/** One click to a store full of invented finds. */
export function LoadDemo({ known }: { readonly known: boolean }) {
  return (
    <form action={loadDemo}>
      <DemoButton>
        Load the demo, Tollgate Wharf <Invented />
      </DemoButton>
      {!known && (
        <span className="soft small">
          {' '}
          It is kept under the name “Visitor” until you <Link href="/person">say who you are</Link>.
        </span>
      )}
    </form>
  )
}
