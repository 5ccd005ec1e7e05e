import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { Stipple } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

const grain = <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={36} />

export function Crust({ children }: { readonly children?: ReactNode }) {
  return (
    <Block seed="even-crust" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={2}>
      {grain}
      {children}
    </Block>
  )
}
