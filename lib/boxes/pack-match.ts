/**
 * Which column each row gets, so that the weights gained are most in all; rows are no more than columns, no column is
 * given twice. Kuhn's method in the form with potentials: exact, and quick for some hundreds.
 */
export function bestMatch(weights: readonly (readonly number[])[]): readonly number[] {
  const rows = weights.length
  const columns = weights[0]?.length ?? 0
  // Counted from 1, as the method has it; row 0 and column 0 are where a search begins.
  const rowOf = new Int32Array(columns + 1)
  const rowPrice = new Float64Array(rows + 1)
  const columnPrice = new Float64Array(columns + 1)
  for (let row = 1; row <= rows; row += 1) {
    const from = new Int32Array(columns + 1)
    const slack = new Float64Array(columns + 1).fill(Infinity)
    const seen = new Uint8Array(columns + 1)
    rowOf[0] = row
    let column = 0
    do {
      seen[column] = 1
      const at = rowOf[column]!
      let least = Infinity
      let next = 0
      for (let other = 1; other <= columns; other += 1) {
        if (seen[other] === 1) continue
        const over = -weights[at - 1]![other - 1]! - rowPrice[at]! - columnPrice[other]!
        if (over < slack[other]!) {
          slack[other] = over
          from[other] = column
        }
        if (slack[other]! < least) {
          least = slack[other]!
          next = other
        }
      }
      for (let other = 0; other <= columns; other += 1) {
        if (seen[other] === 1) {
          rowPrice[rowOf[other]!]! += least
          columnPrice[other]! -= least
        } else slack[other]! -= least
      }
      column = next
    } while (rowOf[column] !== 0)
    while (column !== 0) {
      const before = from[column]!
      rowOf[column] = rowOf[before]!
      column = before
    }
  }
  const match = Array.from({ length: rows }, () => -1)
  for (let column = 1; column <= columns; column += 1)
    if (rowOf[column]! > 0) match[rowOf[column]! - 1] = column - 1
  return match
}
