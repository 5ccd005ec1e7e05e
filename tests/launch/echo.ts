// Run by the tests of run.mjs: says under which Node it runs and with what, then does as told.
const [told, ...rest] = process.argv.slice(2)
process.on('SIGTERM', () => process.exit(7))
console.log(JSON.stringify({ node: process.version, rest, folder: process.cwd() }))
if (told === 'wait') setTimeout(() => process.exit(8), 30_000)
else process.exit(Number(told))
