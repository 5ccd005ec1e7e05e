/** What figures rest on, below them and quieter. */
export function Rests({ lines }: { readonly lines: readonly string[] }) {
  return lines.map((line) => (
    <p key={line} className="measure small soft">
      {line}
    </p>
  ))
}
