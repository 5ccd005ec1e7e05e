import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import { disagreements, type Answers, type Ran } from './logger-answers.ts'
import { writeReadings } from './logger-workload.ts'

interface Ours extends Ran {
  readonly readSeconds: number
  readonly newLimitsSeconds: number
  readonly everythingSeconds: number
  readonly answers: Answers
}

/** Medians of all rounds; peaks are the highest of any. */
export interface LoggerFigures {
  readonly readings: number
  readonly bytes: number
  readonly rounds: number
  readonly byteLoop: Ran
  readonly ours: Ran & Pick<Ours, 'readSeconds' | 'newLimitsSeconds' | 'everythingSeconds'>
  readonly duckdb: Ran
  readonly answers: Answers
  /** What ours and DuckDB's disagree about; empty where they answer alike. */
  readonly disagree: readonly string[]
  readonly year: YearFigures
}

/** A year of readings a minute apart: read, packed into days, drawn. */
export interface YearFigures {
  readonly readings: number
  readonly readSeconds: number
  readonly packSeconds: number
  readonly packedMegabytes: number
  readonly bucketSeconds: number
  readonly dayAddedMilliseconds: number
  readonly peakMegabytes: number
}

const run = promisify(execFile)

/** Each work in a process of its own, so that none is held to what another has left in memory. */
async function alone<Result>(script: string, file: string): Promise<Result> {
  const { stdout } = await run(process.execPath, [path.join(import.meta.dirname, script), file], {
    maxBuffer: 1 << 26,
  })
  return JSON.parse(stdout) as Result
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!

function together<One extends Ran>(runs: readonly One[]): One {
  const keys = Object.keys(runs[0]!).filter((key) => key.endsWith('econds'))
  const medians = Object.fromEntries(
    keys.map((key) => [key, median(runs.map((one) => one[key as 'seconds']))]),
  )
  return { ...runs[0]!, ...medians, peakMegabytes: Math.max(...runs.map((one) => one.peakMegabytes)) }
}

export async function loggerFigures(readings = 10_000_000, rounds = 5): Promise<LoggerFigures> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'quietmetal-bench-'))
  try {
    const [file, yearFile] = [path.join(folder, 'readings.csv'), path.join(folder, 'year.csv')]
    const bytes = writeReadings(file, readings)
    writeReadings(yearFile, 365 * 1440)
    const [bytesRun, oursRun, duckdbRun, yearRun]: [
      Ran[],
      Ours[],
      (Ran & { answers: Answers })[],
      YearFigures[],
    ] = [[], [], [], []]
    // What Node has compiled once it keeps; without a first time the first round would stand apart.
    for (const script of ['logger-bytes.ts', 'logger-ours.ts', 'logger-duckdb.ts', 'logger-year.ts'])
      await alone(script, yearFile)
    for (let round = 0; round < rounds; round += 1) {
      bytesRun.push(await alone('logger-bytes.ts', file))
      oursRun.push(await alone('logger-ours.ts', file))
      duckdbRun.push(await alone('logger-duckdb.ts', file))
      yearRun.push(await alone('logger-year.ts', yearFile))
    }
    const [ours, duckdb] = [together(oursRun), together(duckdbRun)]
    return {
      readings,
      bytes,
      rounds,
      byteLoop: together(bytesRun),
      ours,
      duckdb,
      answers: ours.answers,
      disagree: disagreements(ours.answers, duckdb.answers),
      year: yearRun.toSorted((a, b) => a.readSeconds - b.readSeconds)[rounds >> 1]!,
    }
  } finally {
    await rm(folder, { recursive: true })
  }
}
