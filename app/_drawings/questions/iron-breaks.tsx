import type { ReactNode } from 'react'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { cracked, shard } from '../kit/lines.ts'
import { Flat, Grains, Powder, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Crust } from './iron-ground.tsx'

/** A broken blister of which the rim stands; what is inside differs. */
function Blister({
  shell,
  inside,
  children,
}: {
  readonly shell: string
  readonly inside: string
  readonly children?: ReactNode
}) {
  return (
    <Crust>
      <Shadow d="M100 74L142 76L148 62L132 56Z" />
      <path d="M80 70Q78 42 107 42T134 70Q107 82 80 70Z" fill={shell} />
      <path d="M88 66L92 54L99 58L104 48L112 54L120 50L127 64Q107 76 88 66Z" fill={inside} />
      {children}
    </Crust>
  )
}

/** A flake has left its scar; what shows in it differs. */
function Scar({ of, children }: { readonly of: string; readonly children?: ReactNode }) {
  return (
    <Crust>
      <Flat d={shard('asked-scar', [107, 60], 32, 16, 0.2, 10)} of={of} />
      <Shadow d="M76 60L88 46L120 44L134 52L130 56L118 49L92 51L82 63Z" />
      {children}
    </Crust>
  )
}

/** A crack wide enough to look into. */
function Gap({ of, children }: { readonly of: string; readonly children?: ReactNode }) {
  return (
    <Crust>
      <Flat d="M100 35L110 36L106 48L116 60L110 70L118 80L114 112H98L100 80L92 70L99 60L90 48Z" of={of} />
      {children}
    </Crust>
  )
}

/** Cracks, blisters and scars of iron. */
export const ironBreaks: Drawings = {
  'crack-run/along-the-length': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes
        d={['a', 'b', 'c', 'd']
          .map((word, index) => cracked(`run-${word}`, [48, 30 + index * 20], [166, 24 + index * 22], 2.4, 9))
          .join('')}
        width={2.6}
      />
    </Close>
  ),
  'crack-run/like-dried-mud': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes
        d={
          ['a', 'b', 'c', 'd']
            .map((word, index) => cracked(`mud-${word}`, [64 + index * 26, 10], [58 + index * 30, 110], 6))
            .join('') +
          ['e', 'f', 'g']
            .map((word, index) => cracked(`mud-${word}`, [54, 32 + index * 26], [160, 30 + index * 28], 5, 9))
            .join('')
        }
        width={2}
      />
    </Close>
  ),
  'crack-run/one-break': (id) => (
    <Close id={id}>
      <Flat d="M40 36H104L98 48L108 58L100 70L106 84H40Z" of={tone.rust} />
      <Flat d="M116 36H180V84H118L112 70L120 58L110 48Z" of={tone.rust} />
      <Stipple seed="one-break" box={[60, 40, 34, 42]} count={16} />
      <Stipple seed="one-break-b" box={[124, 40, 32, 42]} count={14} />
    </Close>
  ),
  'crack-walls/bright-orange': (id) => (
    <Close id={id}>
      <Gap of={tone.rustDeep}>
        <Powder seed="wall-fresh" at={[104, 54]} across={12} up={22} count={48} of={tone.bright} size={2.6} />
        <Powder
          seed="wall-fresh-b"
          at={[107, 94]}
          across={9}
          up={16}
          count={24}
          of={tone.bright}
          size={2.6}
        />
      </Gap>
    </Close>
  ),
  'crack-walls/soil-filled': (id) => (
    <Close id={id}>
      <Gap of={tone.soil}>
        <Stipple seed="soil-in-crack" box={[100, 40, 10, 70]} count={20} size={1.6} />
        <Grains
          points={[
            [104, 50],
            [108, 68],
            [104, 86],
            [109, 100],
          ]}
          of={tone.iron}
          size={4}
        />
      </Gap>
    </Close>
  ),
  'crack-walls/clean-dark': (id) => (
    <Close id={id}>
      <Gap of={tone.black} />
    </Close>
  ),
  'blister-shell/hollow-rust-shell': (id) => (
    <Close id={id}>
      <Blister shell={tone.bright} inside={tone.black}>
        <Arrow at={[107, 62]} from={[112, 22]} />
      </Blister>
    </Close>
  ),
  'blister-shell/clear-film': (id) => (
    <Close id={id}>
      <Crust>
        <path d="M76 70Q76 40 107 40T138 70Q107 82 76 70Z" fill={tone.gloss} fillOpacity="0.55" />
        <Strokes d="M84 62Q86 48 102 46M124 50Q132 56 133 64" of={tone.gloss} width={3} />
        <Flat d="M112 78L120 62L136 58L142 68L128 80Z" of={tone.rust} />
        <path d="M120 62L130 50L138 54L136 58Z" fill={tone.gloss} />
      </Crust>
    </Close>
  ),
  'blister-shell/dark-scale': (id) => (
    <Close id={id}>
      <Blister shell={tone.ironDeep} inside={tone.black}>
        <Strokes d="M84 60Q88 48 98 46M88 64Q90 58 92 54" of={tone.gloss} width={1.6} />
        <Flat d="M60 72l10-8 12 5-8 8zM138 74l8-7 8 6-8 6z" of={tone.ironDeep} />
      </Blister>
    </Close>
  ),
  'blister-shell/soil-through': (id) => (
    <Close id={id}>
      <Blister shell={tone.soil} inside={tone.soil}>
        <Stipple seed="soil-through" box={[86, 48, 42, 22]} count={26} size={1.8} />
        <Grains
          points={[
            [98, 60],
            [112, 62],
            [106, 54],
          ]}
          of={tone.iron}
          size={4}
        />
      </Blister>
    </Close>
  ),
  'flake-scar/orange-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.rustDeep}>
        <Powder seed="scar-fresh" at={[108, 60]} across={28} up={13} count={70} of={tone.bright} size={2.4} />
      </Scar>
    </Close>
  ),
  'flake-scar/dark-firm-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.black}>
        <Shine
          at={[
            [92, 66],
            [108, 62],
            [120, 68],
          ]}
        />
      </Scar>
    </Close>
  ),
  'flake-scar/soiled-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.soil}>
        <Stipple seed="scar-soil" box={[84, 52, 48, 18]} count={26} size={1.6} />
        <Grains
          points={[
            [96, 62],
            [118, 58],
            [110, 67],
          ]}
          of={tone.rust}
          size={4}
        />
      </Scar>
    </Close>
  ),
}
