const polynomial = (x: number, coefficients: readonly number[]) =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)

const middleTop = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
] as const
const middleBottom = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
] as const
const tailTop = [
  1.4234371107496835, 4.630337846156545, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 7.745450142783414e-4,
] as const
const tailBottom = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  5.475938084995345e-4, 1.0507500716444169e-9,
] as const

/** Beyond it the published third branch would be needed; nothing here draws that far out. */
const farthest = Math.exp(-25)

/**
 * Standard deviations below which a share of a normal distribution lies [ratio]; NaN beyond one in 70 thousand million.
 * @param share [ratio] above 0 and below 1
 * @source Wichura 1988, algorithm AS 241, its first two branches
 * @valid 1.4e-11 to 1 - 1.4e-11; NaN outside
 * @agrees 1e-15 with the printed algorithm
 */
export function normalQuantile(share: number): number {
  const off = share - 0.5
  if (Math.abs(off) <= 0.425) {
    const r = 0.180625 - off * off
    return (off * polynomial(r, middleTop)) / polynomial(r, middleBottom)
  }
  const tail = off < 0 ? share : 1 - share
  if (!(tail >= farthest)) return Number.NaN
  const r = Math.sqrt(-Math.log(tail)) - 1.6
  return (Math.sign(off) * polynomial(r, tailTop)) / polynomial(r, tailBottom)
}
