'use client'

export function PrintButton({ says }: { readonly says: string }) {
  return (
    <button className="button" type="button" onClick={() => window.print()}>
      {says}
    </button>
  )
}
