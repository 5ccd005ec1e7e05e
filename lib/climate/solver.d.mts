/** The part of odex, Hairer and Wanner's extrapolation method for equations that are not stiff, that is used here. */
export class Solver {
  constructor(unknowns: number)
  denseOutput: boolean
  relativeTolerance: number
  absoluteTolerance: number
  initialStepSize: number
  maxStepSize: number
  maxSteps: number
  solve(
    slope: (x: number, y: readonly number[]) => number[],
    from: number,
    y: readonly number[],
    to: number,
    /** After every step; `within` reads any unknown inside it. Giving false ends the run. */
    step?: (
      count: number,
      before: number,
      x: number,
      y: readonly number[],
      within: (unknown: number, x: number) => number,
    ) => boolean | void,
  ): {
    readonly y: readonly number[]
    /** 0: went through. 1: more steps than allowed. 2: ended by `step`. */
    readonly outcome: 0 | 1 | 2
    readonly xEnd: number
    readonly nEval: number
  }
}
