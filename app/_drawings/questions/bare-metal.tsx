import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Glint, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Green } from './green-ground.tsx'

/** Green that has a bare place in it; how the bare place looks differs. */
function Bare({ children }: { readonly children: ReactNode }) {
  return (
    <Green rough={0.5}>
      <Flat d={blot('bare-place', [106, 59], 36, 16, 0.12, 13)} of={tone.bronze} />
      {children}
    </Green>
  )
}

const pits = strewn('sponge', 20, [80, 49, 54, 19], 9)
  .map(([x, y]) => `M${Math.round(x) - 2} ${Math.round(y)}a2.4 1.8 0 1 1 5 0a2.4 1.8 0 1 1-5 0z`)
  .join('')

const scored = 'M64 74l30-34M74 76l34-38M84 78l36-40M94 79l34-38M106 79l32-36M120 77l26-29'

/** How metal looks where it lies bare, and where red lies. */
export const bareMetal: Drawings = {
  'bare-look/scratches-or-tool-marks': (id) => (
    <Close id={id}>
      <Bare>
        <Strokes d={scored} width={2.6} />
        <Strokes d={scored} of={tone.gloss} width={1.1} />
      </Bare>
    </Close>
  ),
  'bare-look/pitted-pink-and-dull': (id) => (
    <Close id={id}>
      <Bare>
        <path d={pits} fill={tone.rustDeep} />
      </Bare>
    </Close>
  ),
  'bare-look/clean-edges-of-a-break': (id) => (
    <Close id={id}>
      <Green rough={0.5}>
        <Flat d="M94 36H120L130 90H84Z" of={tone.bronze} />
        <path d="M94 36L84 80V90L94 43ZM120 36L130 80V90L120 43Z" fill={tone.greenDeep} />
        <path d="M84 79H130V89H84Z" fill={tone.bronze} stroke="none" />
        <Strokes d="M84 80V90H130V80" width={1.6} />
        <Shine at={[[104, 64]]} />
        <Arrow at={[129, 84]} from={[150, 62]} />
      </Green>
    </Close>
  ),
  'bare-look/smooth-with-old-detail': (id) => (
    <Close id={id}>
      <Bare>
        <Strokes d="M78 50H136M76 66H138" width={1.5} />
        <path d="M80 64l6-11 6 11zM96 64l6-11 6 11zM112 64l6-11 6 11z" fill={tone.rustDeep} />
        <Strokes d="M128 55h6M128 60h6" of={tone.gloss} width={2} />
      </Bare>
    </Close>
  ),
  'bare-look/all-over-like-new': (id) => (
    <Close id={id}>
      <Block seed="like-new" metal={tone.bronze} rough={0.2}>
        <Shine
          at={[
            [64, 56],
            [74, 74],
            [94, 54],
            [108, 72],
            [124, 54],
            [140, 72],
          ]}
        />
        <Glint at={[86, 50]} r={9} />
        <Glint at={[132, 64]} r={7} />
      </Block>
    </Close>
  ),
  'red-lie/under-the-green': (id) => (
    <Close id={id}>
      <Block seed="red-under" layers={[{ of: tone.red, deep: 8 }]} metal={tone.bronze}>
        <Strokes d={slant} />
        <Flat d="M46 28H94L102 42L96 52L106 60L100 70L108 80H46Z" of={tone.green} />
        <Flat d="M46 80H108V87H46Z" of={tone.greenDeep} />
        <Flat d="M136 36H168V80H144L148 66L138 56L142 46Z" of={tone.green} />
        <Flat d="M144 79H168V87L145 86Z" of={tone.greenDeep} />
        <Arrow at={[122, 64]} from={[120, 22]} />
      </Block>
    </Close>
  ),
  'red-lie/over-all-bare': (id) => (
    <Close id={id}>
      <Block seed="red-bare" layers={[{ of: tone.red, deep: 8 }]} metal={tone.bronze}>
        <Strokes d={slant} />
        <Strokes d="M58 50l5 3M60 62l5 3M66 72l5 3M78 66l5 3M82 48l5 3M150 50l5 3M148 62l5 3M152 74l4 3" />
      </Block>
    </Close>
  ),
  'red-lie/in-cut-or-cast-fields': (id) => (
    <Close id={id}>
      <Block seed="red-fields" metal={tone.bronze} surface={tone.green} rough={0.3}>
        <Flat d="M68 44H98L94 72H58Z" of={tone.red} />
        <Flat d="M112 44H142L154 72H116Z" of={tone.red} />
        <Strokes d={slantInFields} />
        <path d="M68 44H98L94 72H58ZM112 44H142L154 72H116Z" strokeWidth="2.4" />
        <Shine
          at={[
            [78, 62],
            [126, 62],
          ]}
        />
      </Block>
    </Close>
  ),
  'red-lie/beside-iron': (id) => (
    <Close id={id}>
      <Green rough={0.5}>
        <Flat d={blot('rust-run', [104, 61], 30, 13, 0.14, 12)} of={tone.red} />
        <Stipple seed="rust-thins" box={[122, 44, 26, 32]} count={20} of={tone.red} size={3} />
        <Flat d="M44 24H84V88H44Z" of={tone.ironDeep} />
        <circle cx="70" cy="56" r="8" fill={tone.rustDeep} />
        <Strokes d="M46 84l16-16M58 88l20-20M74 88l10-10M46 44l18-18M72 32l10-10" width={0.9} />
        <Arrow at={[98, 60]} from={[122, 24]} />
      </Green>
    </Close>
  ),
  'red-lie/bright-copper-specks': (id) => (
    <Close id={id}>
      <Green rough={0.5}>
        <Flat
          d={`${blot('speck-a', [80, 50], 9, 5, 0.3)}${blot('speck-b', [118, 58], 13, 6, 0.3)}${blot('speck-c', [90, 70], 7, 4, 0.3)}${blot('speck-d', [142, 70], 6, 4, 0.3)}`}
          of={tone.bright}
        />
        <Glint at={[80, 48]} r={8} />
        <Glint at={[121, 56]} r={10} />
        <Glint at={[142, 68]} r={6} />
      </Green>
    </Close>
  ),
}

const slant =
  'M88 44l5 3M104 46l5 3M114 54l5 3M126 46l5 3M110 70l5 3M124 70l5 3M134 62l5 3M96 58l5 3M92 72l5 3'
const slantInFields = 'M72 50l5 3M66 62l5 3M86 66l5 3M88 50l5 3M118 50l5 3M124 66l5 3M142 64l5 3M134 48l5 3'
