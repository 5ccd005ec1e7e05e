import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { Arrow } from '../kit/lens.tsx'
import { Flat, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

const crust = [{ of: tone.green, deep: 9 }]

/** A green crust, on which the skin lies from the left. */
export function Crusted({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="skinned" layers={crust} metal={tone.bronze} rough={0.5}>
      <Stipple seed="skinned-grain" box={[112, 40, 44, 38]} count={22} />
      {children}
    </Block>
  )
}

/** A raised bar from which the skin is worn; it stays in the hollows beside it. */
export function Worn({ of }: { readonly of: string }) {
  return (
    <Block seed="worn-bar" metal={tone.bronze} surface={of} rough={0.3}>
      <Flat d="M94 36H120L132 80H82Z" of={tone.bronze} />
      <Strokes d="M99 36L90 80M115 36L124 80" of={of} width={2} />
      <path d="M97 36L86 80M117 36L128 80" strokeDasharray="1 3" />
      <Flat d="M50 80H82V83H50ZM132 80H164V83H132Z" of={of} />
      <Shine
        at={[
          [62, 56],
          [72, 74],
          [138, 54],
          [146, 74],
        ]}
      />
      <Strokes d="M102 46h8M100 54h10M100 62h12" of={tone.soft} />
      <Arrow at={[107, 60]} from={[107, 22]} />
    </Block>
  )
}

/** No line where the skin ends: its grains become fewer. */
export function Fading({ of }: { readonly of: string }) {
  return (
    <Crusted>
      <Flat d="M50 36H84V80H50Z" of={of} bare />
      <Stipple seed="fade-near" box={[82, 38, 18, 40]} count={34} of={of} size={4} />
      <Stipple seed="fade-mid" box={[98, 38, 18, 40]} count={20} of={of} size={3} />
      <Stipple seed="fade-far" box={[112, 38, 26, 40]} count={12} of={of} size={2} />
      <Strokes d="M50 36H160" />
      <Shine
        at={[
          [60, 56],
          [66, 74],
        ]}
      />
    </Crusted>
  )
}
