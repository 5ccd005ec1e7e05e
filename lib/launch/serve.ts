import http from 'node:http'
import path from 'node:path'
import next from 'next'
import { migrateData, whereData } from '../start.ts'

/** Only this machine can call: sharing it on a network needs accounts first. */
const host = '127.0.0.1'
const usualPort = 4174
const portsTried = 50

const root = path.resolve(import.meta.dirname, '../..')
// Next looks for its build, and the pages for their knowledge, in the folder they run in.
process.chdir(root)

function listen(server: http.Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (flaw: NodeJS.ErrnoException) =>
      flaw.code === 'EADDRINUSE' ? resolve(false) : reject(flaw),
    )
    server.listen(port, host, () => resolve(true))
  })
}

async function freePort(server: http.Server): Promise<number> {
  const asked = process.env['PORT'] ?? ''
  if (asked !== '') {
    const port = Number(asked)
    if (!Number.isInteger(port) || port < 0 || port > 65_535)
      throw new Error(`PORT is a number up to 65535, not "${asked}".`)
    if (await listen(server, port)) return (server.address() as { port: number }).port
    throw new Error(`Port ${asked} is taken by another program. Leave PORT out and a free one is found.`)
  }
  for (let port = usualPort; port < usualPort + portsTried; port += 1) {
    if (await listen(server, port)) return port
  }
  throw new Error(`No port from ${usualPort} to ${usualPort + portsTried - 1} is free; name one with PORT.`)
}

async function serve(): Promise<void> {
  const where = whereData(root, process.env)
  await migrateData(where)
  let answer: ReturnType<ReturnType<typeof next>['getRequestHandler']> | null = null
  const server = http.createServer((request, response) => {
    if (answer) void answer(request, response)
    else response.writeHead(503, { 'retry-after': '1' }).end()
  })
  const port = await freePort(server)
  const app = next({ dev: process.env['NODE_ENV'] === 'development', dir: root, hostname: host, port })
  await app.prepare()
  answer = app.getRequestHandler()
  console.log(`\nQuietmetal is open at http://${host}:${port}`)
  // A database address may hold a password, so only its own parts are named.
  console.log(
    where.kind === 'sqlite'
      ? `Your data lies in ${path.dirname(where.file)} (QUIETMETAL_DATA names another folder)`
      : `Your data lies on the PostgreSQL server ${new URL(where.url).host}`,
  )
  console.log('Stop it with Ctrl+C.')
  const stop = () => {
    server.close()
    server.closeAllConnections()
    void app.close().finally(() => process.exit(0))
  }
  process.once('SIGINT', stop)
  process.once('SIGTERM', stop)
}

try {
  await serve()
} catch (flaw) {
  console.error(`Quietmetal could not start. ${flaw instanceof Error ? flaw.message : String(flaw)}`)
  process.exit(1)
}
