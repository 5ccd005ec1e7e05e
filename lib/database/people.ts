import type { Kysely } from 'kysely'
import { uuidV7 } from '../base/uuid.ts'
import type { Actor, Person } from '../services/kept.ts'
import type { Reads } from '../services/ports.ts'
import { fresh } from './hand.ts'
import { kept } from './kept-row.ts'
import type { PersonRow, Tables } from './tables.ts'

const person = (row: PersonRow): Person => ({
  ...kept(row),
  name: row.name,
  role: row.role as Person['role'],
  verified: row.verified === 1,
})

export function peopleReads(db: Kysely<Tables>): Reads['people'] {
  return {
    all: async () =>
      (await db.selectFrom('person').selectAll().orderBy('name').orderBy('role').execute()).map(person),
  }
}

/** The ids of who writes and of the device, both entered at their first write (by themselves: nobody else is there yet). */
export async function idsOf(
  db: Kysely<Tables>,
  { name, role, device }: Actor,
  at: number,
): Promise<{ readonly personId: string; readonly deviceId: string }> {
  const findPerson = db.selectFrom('person').select('id').where('name', '=', name).where('role', '=', role)
  const findDevice = db.selectFrom('device').select('id').where('name', '=', device)
  const [knownPerson, knownDevice] = [
    await findPerson.executeTakeFirst(),
    await findDevice.executeTakeFirst(),
  ]
  if (knownPerson && knownDevice) return { personId: knownPerson.id, deviceId: knownDevice.id }
  const own = { at, personId: knownPerson?.id ?? uuidV7(at), deviceId: knownDevice?.id ?? uuidV7(at) }
  await db
    .insertInto('person')
    .values({ ...fresh(own), id: own.personId, name, role, verified: 0 })
    .onConflict((on) => on.columns(['name', 'role']).doNothing())
    .execute()
  await db
    .insertInto('device')
    .values({ ...fresh(own), id: own.deviceId, name: device })
    .onConflict((on) => on.column('name').doNothing())
    .execute()
  const [personNow, deviceNow] = [
    await findPerson.executeTakeFirstOrThrow(),
    await findDevice.executeTakeFirstOrThrow(),
  ]
  return { personId: personNow.id, deviceId: deviceNow.id }
}
