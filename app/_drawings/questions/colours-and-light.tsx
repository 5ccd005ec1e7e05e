import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Flat, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A crusted plate with eight fields; each colour has its own pattern. */
function Fields({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M10 14H150V106H10Z" fill={tone.green} stroke={tone.ink} strokeWidth="1.4" />
      <Stipple seed="crust-about" box={[12, 16, 136, 88]} count={110} size={1.6} />
      {children}
    </>
  )
}
const corners = [24, 54, 84, 114].flatMap((x) => [30, 64].map((y) => [x, y] as const))
const squares = (which: (index: number) => boolean) =>
  corners
    .filter((_, index) => which(index))
    .map(([x, y]) => `M${x} ${y}h24v26h-24z`)
    .join('')
const upright = (which: (index: number) => boolean) =>
  corners
    .filter((_, index) => which(index))
    .map(([x, y]) => `M${x + 5} ${y}v26M${x + 10} ${y}v26M${x + 15} ${y}v26M${x + 20} ${y}v26`)
    .join('')
/** Column by column, two to a column: every other one, as on a board. */
const dark = (index: number) => (index + Math.floor(index / 2)) % 2 === 0

/** A whole coin, and the label that lay on it. */
function Labelled({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <circle cx="62" cy="60" r="50" fill={tone.silver} stroke={tone.ink} strokeWidth="1.4" />
      {children}
      <path d="M106 14L152 8L156 42L110 48Z" fill={tone.white} stroke={tone.ink} strokeWidth="1.4" />
      <Strokes d="M112 24L146 19M113 32L140 28" of={tone.soft} width={2} />
    </>
  )
}
const under = 'M44 40H84V74H44Z'
const inCoin = strewn('lit-coin', 130, [16, 14, 92, 92], 7).filter(
  ([x, y]) => Math.hypot(x - 62, y - 60) < 46,
)
const outside = inCoin.filter(([x, y]) => x < 42 || x > 86 || y < 38 || y > 76)
const speckled = (points: readonly (readonly [number, number])[]) =>
  points.map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}h0`).join('')

/** Colours told by their patterns, and what light did. */
export const coloursAndLight: Drawings = {
  'fill-colour/several-in-pattern': () => (
    <Fields>
      <path d={squares(dark)} fill={tone.blue} strokeWidth="2" />
      <path d={upright(dark)} stroke={tone.gloss} strokeWidth="1.6" />
      <path d={squares((index) => !dark(index))} fill={tone.yellow} strokeWidth="2" />
    </Fields>
  ),
  'fill-colour/one-unlike-crust': () => (
    <Fields>
      <path d={squares(() => true)} fill={tone.blue} strokeWidth="2" />
      <path d={upright(() => true)} stroke={tone.gloss} strokeWidth="1.6" />
    </Fields>
  ),
  'fill-colour/as-the-crust': () => (
    <Fields>
      <Flat d={squares(() => true)} of="none" />
    </Fields>
  ),
  'silver-light/darkened': () => (
    <Labelled>
      <circle cx="62" cy="60" r="49" fill={tone.lavender} stroke="none" />
      <path d={speckled(outside)} strokeWidth="3" strokeLinecap="round" />
      <path d={under} fill={tone.silver} strokeDasharray="3 2" />
    </Labelled>
  ),
  'silver-light/the-same': () => (
    <Labelled>
      <circle cx="62" cy="60" r="49" fill={tone.lavender} stroke="none" />
      <path d={speckled(inCoin)} strokeWidth="3" strokeLinecap="round" />
      <path d={under} strokeDasharray="3 2" />
    </Labelled>
  ),
}
