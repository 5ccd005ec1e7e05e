import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

/**
 * One project for the pure rooms, one for components, which need a document, and one for whole paths through a browser,
 * which come last and one by one: they measure what a person would wait for.
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/app/**', 'tests/journeys/**'],
          setupFiles: ['tests/seed.ts'],
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
      {
        test: {
          name: 'journeys',
          include: ['tests/journeys/**/*.test.ts'],
          environment: 'node',
          globalSetup: 'tests/journeys/setup/prepare.ts',
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          testTimeout: 90_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
