import type { Trouble } from '../base/trouble.ts'

/** What went wrong outside, and what to do: for screens and the command line. */
export function troubleWords(trouble: Trouble): string {
  switch (trouble.kind) {
    case 'missing':
      return `This ${trouble.what} is not here any more. Reload the page to see what is.`
    case 'changed-meanwhile':
      return `Somebody else changed this ${trouble.what} while you had it open. Reload, look at what they wrote, and decide again.`
    case 'unavailable':
      return 'The database cannot be reached or written. Nothing was kept; try again in a moment.'
    case 'not-accepted':
      return `${trouble.field}: ${notAccepted[trouble.because]}`
  }
}

const notAccepted = {
  empty: 'write something here.',
  'too-long': 'this is too long to be kept.',
  unknown: 'this is not known here.',
  taken: 'this is taken already.',
} as const
