import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

/** One project for the pure rooms and one for components, which need a document. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/app/**'],
          environment: 'node',
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
      {
        plugins: [react()],
        test: {
          name: 'app',
          include: ['tests/app/**/*.test.{ts,tsx}'],
          environment: 'jsdom',
          setupFiles: ['tests/app/setup.ts'],
          testTimeout: 30_000,
        },
      },
    ],
  },
})
