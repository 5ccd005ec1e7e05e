/** The facts in which the record keeps what a method found; all else it finds is kept as answers to questions. */
export const methodFacts: Readonly<Record<string, readonly string[]>> = {
  xrf: ['xrf'],
  xrd: ['xrd'],
  raman: ['raman'],
  'x-radiography': ['radiograph', 'core'],
  'chloride-test': ['silver_nitrate', 'residual_chloride_ppm', 'bath_chloride_mg_l'],
}
