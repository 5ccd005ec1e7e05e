import fc from 'fast-check'

/**
 * Laws are tried on the same drawn cases on every machine, so that a run tells of the change and not of luck.
 * `FAST_CHECK_SEED=random` draws anew, any number draws that one's cases.
 */
const wanted = process.env['FAST_CHECK_SEED'] ?? '20261125'
if (wanted !== 'random') fc.configureGlobal({ seed: Number(wanted) })
