/** How far a check may lie from the print, and why: said once, because most prints are of few kinds. */
export const wholeNumber = 'exact: a printed whole number'
export const printedDecimal = 'exact: a printed decimal, kept as it stands'
export const asLine = 'exact: a printed line, tried at it and one beyond'
export const asBand = 'exact: both ends are printed whole numbers'
export const inWords = 'none: printed in words, the advice is there or is not'
