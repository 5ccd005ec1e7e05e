import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { cracked } from '../kit/lines.ts'
import { Flat, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** One line that runs to the cut, where its bottom shows. */
function Groove({
  top,
  cut,
  children,
}: {
  readonly top: string
  readonly cut: string
  readonly children?: ReactNode
}) {
  return (
    <Block seed="groove" metal={tone.bronze} rough={0.3}>
      <Flat d={top} of={tone.rustDeep} />
      <Flat d={cut} of={tone.air} />
      <Strokes d="M60 50H78M62 64H74M138 48H152M140 66H152" of={tone.gloss} width={1.6} />
      {children}
    </Block>
  )
}

/** The bottom, the end and the order of lines. */
export const cutLines: Drawings = {
  'cutline-bottom/sharp-v': (id) => (
    <Close id={id}>
      <Groove top="M101 36H113L122 80H92Z" cut="M92 80H122L107 104Z">
        <Strokes d="M107 36V104" width={1.6} />
        <Arrow at={[109, 100]} from={[140, 98]} />
      </Groove>
    </Close>
  ),
  'cutline-bottom/soft-u': (id) => (
    <Close id={id}>
      <Groove top="M96 36H118L130 80H84Z" cut="M84 80H130C126 98 88 98 84 80Z">
        <path d="M104 38L98 78M110 38L116 78" stroke={tone.bronze} strokeWidth="3" />
        <Arrow at={[109, 93]} from={[142, 100]} />
      </Groove>
    </Close>
  ),
  'cutline-bottom/flat-or-undercut': (id) => (
    <Close id={id}>
      <Groove top="M100 36H114L120 80H94Z" cut="M94 80H120L128 102H86Z">
        <Strokes d="M104 37L100 79M110 37L114 79" of={tone.bronze} />
        <Arrow at={[124, 98]} from={[148, 84]} />
      </Groove>
    </Close>
  ),
  'cutline-bottom/ragged': (id) => (
    <Close id={id}>
      <Block seed="groove" metal={tone.bronze} rough={0.3}>
        <path
          d="M106 36L111 44L103 52L112 60L101 68L110 76L104 80L110 88L103 96L109 104L104 114H99L103 104L97 96L104 88L98 80L105 76L95 68L106 60L98 52L106 44L102 36Z"
          fill={tone.black}
        />
        <Strokes d="M60 50H78M62 64H74M138 48H152M140 66H152" of={tone.gloss} width={1.6} />
      </Block>
    </Close>
  ),
  'cutline-end/tapers': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Flat d="M46 46Q90 50 146 62Q90 70 46 72Z" of={tone.rustDeep} />
      <Strokes d="M46 60L146 62" />
      <Arrow at={[146, 60]} from={[136, 30]} />
    </Close>
  ),
  'cutline-end/stops-square': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Flat d="M46 48H134V72H46Z" of={tone.rustDeep} />
      <Strokes d="M46 60H128L134 48M128 60L134 72" />
      <Flat d="M134 50l8 4v12l-8 4z" of={tone.gold} />
      <Arrow at={[138, 52]} from={[132, 26]} />
    </Close>
  ),
  'cutline-end/rounds-off': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Flat d="M46 46H128A14 14 0 0 1 128 74H46Z" of={tone.rustDeep} />
      <path d="M46 56H126A5 5 0 0 1 126 66H46" stroke={tone.bronze} strokeWidth="2.4" />
      <Arrow at={[142, 60]} from={[148, 32]} />
    </Close>
  ),
  'cutline-end/runs-out-branching': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Strokes d={cracked('branching-a', [46, 58], [98, 60], 3)} width={4} />
      <Strokes
        d={`${cracked('branching-b', [98, 60], [144, 34], 3)}${cracked('branching-c', [98, 60], [140, 84], 3)}`}
        width={2.2}
      />
      <Strokes
        d={`${cracked('branching-d', [120, 48], [150, 56], 2)}${cracked('branching-e', [118, 72], [126, 96], 2)}${cracked('branching-f', [78, 58], [92, 34], 2)}`}
      />
    </Close>
  ),
  'cutline-order/in-a-design': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M50 24H164M50 96H164M52 82L72 40L92 82L112 40L132 82L152 40L172 82" strokeWidth="2.4" />
      <path
        d="M72 66a5 5 0 1 0 .1 0M112 66a5 5 0 1 0 .1 0M92 44a5 5 0 1 0 .1 0M132 44a5 5 0 1 0 .1 0"
        strokeWidth="1.8"
      />
    </Close>
  ),
  'cutline-order/parallel-bundle': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M58 50l70-16M62 56l88-20M58 62l76-17M66 66l84-19M60 73l82-19M70 77l80-18M64 84l78-18M76 87l70-16M72 94l58-13" />
    </Close>
  ),
  'cutline-order/across-everything': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d="M50 24H164M50 96H164M52 82L72 40L92 82L112 40L132 82L152 40L172 82"
        stroke={tone.rustDeep}
        strokeWidth="2.4"
      />
      <path d="M54 30L158 92M50 70L140 8M78 112L128 14" />
      <path d="M55 33L159 95M51 73L141 11M80 112L130 14" stroke={tone.gloss} strokeWidth="0.9" />
    </Close>
  ),
  'cutline-order/net-or-branches': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Strokes
        d={
          ['a', 'b', 'c', 'd']
            .map((word, index) => cracked(`mud-${word}`, [64 + index * 26, 10], [58 + index * 30, 110], 6))
            .join('') +
          ['e', 'f', 'g']
            .map((word, index) => cracked(`mud-${word}`, [54, 32 + index * 26], [160, 30 + index * 28], 5, 9))
            .join('')
        }
        width={1.5}
      />
    </Close>
  ),
}
