import { expect, test } from 'vitest'
import type { Fills } from '../../lib/knowledge/knowledge.ts'
import { knowledge } from '../knowledge-at-hand.ts'

/** Codes that whoever reads a plan from outside looks for: each is said by some rule of the decisions that fill its part. */

function said(...fills: readonly Fills[]): ReadonlySet<string> {
  return new Set(
    knowledge.decisions.flatMap((decision) =>
      decision.fills !== null && fills.includes(decision.fills) && decision.policy === 'collect'
        ? decision.answers
        : [],
    ),
  )
}

const missing = (codes: string, from: ReadonlySet<string>) =>
  codes
    .trim()
    .split(/\s+/)
    .filter((code) => !from.has(code))

test('handling', () => {
  const codes = `
    do-not-wash do-not-brush do-not-clean leave-soil-on keep-wet keep-cool-and-dark air-dry-openly do-not-seal-wet
    do-not-freeze do-not-heat support-fully wear-gloves do-not-touch do-not-take-apart photograph-first`
  expect(missing(codes, said('handling'))).toEqual([])
})

test('packing', () => {
  const codes = `
    perforated-bag dry-box bag-singly bulk-by-context keep-metals-apart keep-from-organics no-wood-or-card no-pvc
    no-rubber-or-wool no-cotton-wool keep-dark inert-foam repack`
  expect(missing(codes, said('packing'))).toEqual([])
})

test('cautions, those of a method with its request', () => {
  const ofMethods = Object.values(knowledge.methods).flatMap(({ cautions }) =>
    cautions.map(({ code }) => code),
  )
  const codes = `
    ammunition firearm radioactive mercury asbestos lead arsenic pesticide-residue cadmium beryllium mould sharp-edges
    human-remains stored-energy contaminated-ground infection cobalt-indicator ionising-radiation silver-nitrate low-oxygen
    dust legal-duty`
  expect(missing(codes, new Set([...said('cautions'), ...ofMethods]))).toEqual([])
})

test('requests', () => {
  const codes = `
    luminescence photography x-radiography optical-microscopy xrf sem-eds xrd raman ftir ct chloride-test metallography`
  expect(missing(codes, said('requests'))).toEqual([])
})

test('air and the order of light', () => {
  expect(missing('no-acid-vapour no-sulphur low-oxygen', said('storage.air'))).toEqual([])
})

test('every part of the plan is filled by some decision', () => {
  const parts: readonly Fills[] = [
    'storage.rh',
    'storage.keep',
    'storage.temperature',
    'storage.light',
    'storage.air',
    'storage.act',
    'storage.interim',
    'storage.ways-out',
    'handling',
    'packing',
    'steps',
    'urgency',
    'inspection',
    'cautions',
    'objections',
    'requests',
    'referrals',
    'selection',
  ]
  const filled = new Set(knowledge.decisions.map(({ fills }) => fills))
  expect(parts.filter((part) => !filled.has(part))).toEqual([])
})
