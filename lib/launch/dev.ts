import process from 'node:process'

// The same server with pages rebuilt as they are edited; for whoever works on the project.
Object.assign(process.env, { NODE_ENV: 'development' })
await import('./serve.ts')
