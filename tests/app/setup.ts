import { cleanup } from '@testing-library/react'
import { afterEach } from 'vitest'

// Without globals the library does not clear the document by itself.
afterEach(cleanup)
