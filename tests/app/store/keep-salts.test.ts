import { beforeEach, describe, expect, test, vi } from 'vitest'
import { given } from '../../../lib/base/outcome.ts'

const keepLogger = vi.fn(async (asked: unknown) => given({ asked }))
const showLogger = vi.fn(async () =>
  given({ logger: { given: { serial: 'TW-L01', model: 'small', stood: [{ box: 'TW-B01' }] } } }),
)

vi.mock('next/cache', () => ({ revalidatePath: () => undefined }))
vi.mock('server-only', () => ({}))
vi.mock('../../../app/_server/person.ts', () => ({
  personHere: async () => ({ name: 'Ash Varley', role: 'store-manager', device: 'desk' }),
}))
vi.mock('../../../app/_server/services.ts', () => ({
  servicesHere: async () => ({ today: () => '2026-11-25', keepLogger, showLogger }),
}))

const { keepSalts } = await import('../../../app/store/loggers/keep-salts.ts')

async function send(answers: Readonly<Record<string, string>>) {
  const form = new FormData()
  const all = { id: 'l', project: 'p', version: '3', temperature: '20', on: '2026-11-24', ...answers }
  for (const [name, value] of Object.entries(all)) form.set(name, value)
  return keepSalts(null, form)
}
const two = {
  first: 'lithium-chloride',
  first_read: '13,8',
  second: 'magnesium-chloride',
  second_read: '34.6',
}

beforeEach(() => keepLogger.mockClear())

describe('a logger held over salts', () => {
  test('keeps what it read and should have read; all else of it stays', async () => {
    expect(await send(two)).toMatchObject({ ok: true })
    expect(keepLogger.mock.calls[0]![0]).toMatchObject({
      projectId: 'p',
      version: 3,
      logger: {
        serial: 'TW-L01',
        stood: [{ box: 'TW-B01' }],
        salts: [
          { salt: 'lithium-chloride', trueRhPercent: 11.31, readRhPercent: 13.8, on: '2026-11-24' },
          { salt: 'magnesium-chloride', trueRhPercent: 33.07, readRhPercent: 34.6 },
        ],
      },
    })
  })

  test('one salt is enough', async () => {
    expect(
      await send({ first: 'lithium-chloride', first_read: '13', second: '', second_read: '' }),
    ).toMatchObject({
      ok: true,
    })
  })

  test.each([
    ['the damper salt read as the drier one', { ...two, second_read: '12' }, 'first_read'],
    ['a second salt without its reading', { ...two, second_read: '' }, 'second_read'],
    ['a second reading without its salt', { ...two, second: '' }, 'second'],
    ['a warmth no source reaches', { ...two, first: 'potassium-acetate', temperature: '50' }, 'temperature'],
    ['a day to come', { ...two, on: '2026-11-26' }, 'on'],
  ])('%s is told at its question, and nothing is kept', async (_, answers, field) => {
    const said = await send(answers)
    expect(said.ok).toBe(false)
    expect(Object.keys(said.wrong)).toContain(field)
    expect(keepLogger).not.toHaveBeenCalled()
  })
})
