import fs from 'node:fs'
import path from 'node:path'
import { Temporal } from 'temporal-polyfill'
import { isoDate, type IsoDate } from './base/calendar.ts'
import { connect, type Where } from './database/engine.ts'
import { migrate } from './database/migrate.ts'
import { storeOver } from './database/store.ts'
import type { Knowledge } from './knowledge/knowledge.ts'
import { knowledgeFrom } from './knowledge/load.ts'
import { addRecords } from './services/add-records.ts'
import { answerLook } from './services/answer-look.ts'
import { boxLabels } from './services/box-labels.ts'
import { enterFlood } from './services/enter-flood.ts'
import { evidenceTable } from './services/evidence-table.ts'
import { enterResult } from './services/enter-result.ts'
import { exportFile } from './services/export-file.ts'
import { exportRecords } from './services/export-records.ts'
import { exportStore } from './services/export-store.ts'
import { exportIdentifications } from './services/identification-table.ts'
import { importFile } from './services/import-file.ts'
import { judgeOutdoorAir } from './services/judge-outdoors.ts'
import { keepBox } from './services/keep-box.ts'
import { keepContacts, sitePeople } from './services/keep-contacts.ts'
import { identify } from './services/identify.ts'
import { keepCoupon } from './services/keep-coupon.ts'
import { keepLog } from './services/keep-log.ts'
import { keepLogger, placeLogger } from './services/keep-logger.ts'
import { keepPlaces } from './services/keep-places.ts'
import { keepRoom } from './services/keep-room.ts'
import { keepRound } from './services/keep-round.ts'
import { keepStoreSetting, showStoreSetting } from './services/keep-store-setting.ts'
import { bandsNeeded, listFinds } from './services/list-finds.ts'
import { listLoggers } from './services/list-loggers.ts'
import { listPlaces } from './services/list-places.ts'
import { listSalvage } from './services/list-salvage.ts'
import { loadDemo } from './services/load-demo.ts'
import { logOriginal } from './services/log-original.ts'
import { logSpread } from './services/log-spread.ts'
import { logView } from './services/log-view.ts'
import { moveFind } from './services/move-find.ts'
import { packStore } from './services/pack-store.ts'
import { planAnalyses } from './services/plan-analyses.ts'
import { planFinds, planRecord } from './services/plan-finds.ts'
import type { World } from './services/ports.ts'
import { findProject, latestChanges, listPeople, listProjects, startProject } from './services/projects.ts'
import { readLogFile } from './services/read-log-file.ts'
import { listImports, rejectedRows } from './services/rejected-rows.ts'
import { renewGel } from './services/renew-gel.ts'
import { listRenewals, renewalCalendar } from './services/renewals.ts'
import { reportBoxes } from './services/report-boxes.ts'
import { showAir } from './services/show-air.ts'
import { showBox } from './services/show-box.ts'
import { showFind } from './services/show-find.ts'
import { showScore } from './services/show-score.ts'
import { showLogger } from './services/show-logger.ts'
import { showStore } from './services/show-store.ts'
import { showKeep } from './services/show-what-if-keep.ts'
import { showWhatIf } from './services/show-what-if.ts'
import { startPage } from './services/start-page.ts'
import { reportYearFile } from './services/store-report-file.ts'
import { reportYear } from './services/store-report.ts'
import { changeWater, noteLid } from './services/tend-box.ts'

type Environment = Readonly<Record<string, string | undefined>>

const kept = '.quietmetal/knowledge.json'

/** The knowledge that `knowledge compile` made. */
export function loadKnowledge(root: string): Knowledge {
  return knowledgeFrom(fs.readFileSync(path.join(root, kept), 'utf8'))
}

export function todayHere(): IsoDate {
  return isoDate(Temporal.Now.plainDateISO().toString())!
}

/** Where the data lies: `DATABASE_URL` names a PostgreSQL server, else a file in the folder that `QUIETMETAL_DATA` names. */
export function whereData(root: string, env: Environment): Where {
  const url = env['DATABASE_URL'] ?? ''
  if (url !== '') return { kind: 'postgresql', url }
  return {
    kind: 'sqlite',
    file: path.join(path.resolve(root, env['QUIETMETAL_DATA'] ?? 'data'), 'quietmetal.sqlite'),
  }
}

/** Brings the tables up to date and lets go again. */
export async function migrateData(where: Where): Promise<readonly string[]> {
  const connected = connect(where)
  try {
    return await migrate(connected.writer)
  } finally {
    await connected.close()
  }
}

const services = {
  addRecords,
  answerLook,
  bandsNeeded,
  boxLabels,
  changeWater,
  enterFlood,
  evidenceTable,
  enterResult,
  exportFile,
  exportIdentifications,
  exportRecords,
  exportStore,
  findProject,
  importFile,
  judgeOutdoorAir,
  keepBox,
  keepContacts,
  identify,
  keepCoupon,
  keepLog,
  keepLogger,
  keepPlaces,
  keepRoom,
  keepRound,
  keepStoreSetting,
  latestChanges,
  listFinds,
  listImports,
  listPeople,
  listPlaces,
  listProjects,
  listRenewals,
  listSalvage,
  loadDemo,
  listLoggers,
  logSpread,
  logOriginal,
  logView,
  moveFind,
  noteLid,
  packStore,
  placeLogger,
  planAnalyses,
  planFinds,
  planRecord,
  readLogFile,
  rejectedRows,
  renewGel,
  reportYear,
  reportYearFile,
  renewalCalendar,
  reportBoxes,
  showAir,
  showBox,
  showFind,
  showScore,
  showKeep,
  showLogger,
  showStore,
  showStoreSetting,
  showWhatIf,
  sitePeople,
  startPage,
  startProject,
} as const

type Bound<Service> = Service extends (world: World, ...given: infer Given) => infer Result
  ? (...given: Given) => Result
  : never

export type Services = { readonly [Name in keyof typeof services]: Bound<(typeof services)[Name]> } & {
  readonly knowledge: Knowledge
  readonly today: () => IsoDate
  readonly close: () => Promise<void>
}

/** Every service joined to a world; the only place where the two meet. */
export function bind(world: World): Services {
  const bound = Object.entries(services).map(([name, service]) => [
    name,
    (...given: readonly unknown[]) => (service as (...all: readonly unknown[]) => unknown)(world, ...given),
  ])
  return {
    ...(Object.fromEntries(bound) as Omit<Services, 'knowledge' | 'today' | 'close'>),
    knowledge: world.knowledge,
    today: world.today,
    close: () => world.store.close(),
  }
}

/** Services over the data of this environment, its tables brought up to date first. */
export async function start(root: string, env: Environment = process.env): Promise<Services> {
  const where = whereData(root, env)
  await migrateData(where)
  return bind({ store: storeOver(connect(where)), knowledge: loadKnowledge(root), today: todayHere, root })
}
