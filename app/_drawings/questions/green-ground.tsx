import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { tone } from '../kit/tones.ts'

const layers = [{ of: tone.green, deep: 10 }]

export function Green({ children, rough = 1 }: { readonly children: ReactNode; readonly rough?: number }) {
  return (
    <Block seed="green-answers" layers={layers} metal={tone.bronze} rough={rough}>
      {children}
    </Block>
  )
}
