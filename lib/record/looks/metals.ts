/** Questions that can be asked of what is seen, and their answers: ids only, the words stand in content/questions. */
export const METALS = {} as const
