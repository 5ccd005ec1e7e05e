import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, cracked, shard } from '../kit/lines.ts'
import { Flat, Grains, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A whole pierced plate; what is in or behind its holes differs. */
function Plate({
  holes,
  of = tone.paper,
  children,
}: {
  readonly holes: string
  readonly of?: string
  readonly children?: ReactNode
}) {
  return (
    <>
      <path d="M14 14H146V106H14Z" fill={tone.bronze} stroke={tone.ink} strokeWidth="1.4" />
      <path d={holes} fill={of} />
      {children}
    </>
  )
}
const lozenges = 'M40 30L54 60L40 90L26 60ZM80 30L94 60L80 90L66 60ZM120 30L134 60L120 90L106 60Z'
const dot = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z`

/** One line and the crust about it, cut through. */
function Crossed({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="line-and-crust" metal={tone.bronze} surface={tone.green} rough={0.8}>
      {children}
    </Block>
  )
}

/** How holes, lines, dents and marks lie to one another and to the crust. */
export const holesAndDents: Drawings = {
  'openwork-order/repeats': () => <Plate holes={lozenges} />,
  'openwork-order/one-placed': () => (
    <Plate holes={dot(80, 28, 7)}>
      <path d="M34 92H126M46 84L80 46L114 84" strokeWidth="1.8" />
      <Arrow at={[86, 32]} from={[118, 42]} />
    </Plate>
  ),
  'openwork-order/anywhere': () => (
    <Plate
      holes={`${shard('any-a', [40, 44], 11, 9, 0.35)}${shard('any-b', [96, 34], 7, 6, 0.35)}${shard('any-c', [66, 82], 9, 8, 0.35)}${shard('any-d', [122, 78], 14, 11, 0.35)}`}
    />
  ),
  'openwork-order/perfectly-round': () => (
    <Plate holes={dot(96, 60, 14)}>
      <path d="M83 54A14 14 0 0 1 109 54" stroke={tone.gloss} strokeWidth="2.4" />
      <path d="M36 92H76M36 84H70" />
    </Plate>
  ),
  'openwork-behind/organic-or-foil': () => (
    <Plate holes={lozenges} of={tone.leather}>
      <Strokes
        d="M30 58q8-6 20 0M34 70q6 4 13 0M72 50q8 5 16 2M70 64q10-6 20-2M76 78q4-4 9-2"
        of={tone.bone}
        width={1.4}
      />
      <path d="M120 30L134 60L120 90L106 60Z" fill={tone.silver} />
      <Shine
        at={[
          [114, 62],
          [120, 76],
        ]}
      />
    </Plate>
  ),
  'openwork-behind/gap-and-rivets': () => (
    <>
      <path d="M14 34H146V48H14Z" fill={tone.bronze} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M34 34H50V48H34ZM72 34H88V48H72ZM110 34H126V48H110Z" fill={tone.paper} />
      <path d="M14 78H146V92H14Z" fill={tone.bronze} stroke={tone.ink} strokeWidth="1.4" />
      <path
        d="M22 26H30V100H22ZM130 26H138V100H130ZM18 22H34V28H18ZM126 22H142V28H126ZM18 98H34V104H18ZM126 98H142V104H126Z"
        fill={tone.iron}
      />
      <Arrow at={[80, 74]} from={[80, 112]} />
    </>
  ),
  'openwork-behind/soil-or-crust': () => (
    <Plate holes={lozenges} of={tone.soil}>
      {[40, 80, 120].map((x) => (
        <Grains key={x} points={strewn(`soil-${x}`, 7, [x - 7, 46, 14, 28], 8)} of={tone.iron} size={2.4} />
      ))}
    </Plate>
  ),
  'openwork-around/pitted-around': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d={blot('pitted-zone', [107, 60], 44, 40, 0.1, 14)}
        fill={tone.rust}
        stroke="none"
        opacity="0.6"
      />
      <Flat d={shard('pitted-hole', [107, 60], 20, 16, 0.35, 14)} of={tone.black} />
      {strewn('pits-around', 22, [66, 22, 82, 76], 13)
        .filter(([x, y]) => Math.abs(x - 107) + Math.abs(y - 60) > 30)
        .map(([x, y], index) => (
          <path key={x} d={blot(`around-${index}`, [x, y], 4, 3, 0.3, 7)} fill={tone.rustDeep} />
        ))}
    </Close>
  ),
  'openwork-around/sound-around': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Flat d="M107 32L134 60L107 88L80 60Z" of={tone.black} />
      <Shine
        at={[
          [72, 42],
          [136, 44],
          [78, 92],
          [134, 90],
        ]}
      />
    </Close>
  ),
  'openwork-around/bubbles-around': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Flat d={blot('cast-hole', [107, 60], 22, 18, 0.2, 9)} of={tone.black} />
      {[
        [74, 40, 7],
        [92, 26, 4],
        [138, 44, 6],
        [146, 66, 4],
        [126, 90, 7],
        [86, 92, 5],
        [70, 72, 5],
      ].map(([x = 0, y = 0, r = 1]) => (
        <path key={x} d={dot(x, y, r)} fill={tone.rustDeep} />
      ))}
      <path
        d="M70 42a6 6 0 0 0 8 3M134 46a5 5 0 0 0 7 2M122 93a6 6 0 0 0 8 2"
        stroke={tone.gloss}
        strokeWidth="1.6"
      />
    </Close>
  ),
  'cutline-and-crust/crust-in-them': (id) => (
    <Close id={id}>
      <Crossed>
        <Flat d="M97 36H117L126 80H88Z" of={tone.greenDeep} />
        <Flat d="M88 80H126L107 102Z" of={tone.greenDeep} />
        <Stipple seed="crust-in-line" box={[97, 40, 20, 44]} count={20} size={1.8} />
        <Flat d={blot('crust-over-line', [112, 56], 18, 8, 0.25)} of={tone.green} />
      </Crossed>
    </Close>
  ),
  'cutline-and-crust/cut-through-crust': (id) => (
    <Close id={id}>
      <Crossed>
        <Flat d="M97 36H117L126 80H88Z" of={tone.bronze} />
        <Flat d="M88 80H126L107 102Z" of={tone.air} />
        <Strokes d="M107 36V100" of={tone.gloss} width={1.8} />
        <Strokes
          d="M97 36L92 44L96 50L90 58L94 66L88 80M117 36L121 44L118 52L124 60L121 70L126 80"
          width={1.8}
        />
        <Shine at={[[112, 60]]} />
      </Crossed>
    </Close>
  ),
  'cutline-and-crust/crust-cracks-too': (id) => (
    <Close id={id}>
      <Crossed>
        <path
          d="M106 36L112 46L104 54L113 64L102 72L110 80L104 92L109 104L105 114H99L102 104L97 92L102 80L95 72L105 64L97 54L105 46L101 36Z"
          fill={tone.black}
        />
        <Strokes
          d={`${cracked('crust-too-a', [98, 54], [72, 46], 2)}${cracked('crust-too-b', [111, 64], [138, 72], 2)}`}
        />
      </Crossed>
    </Close>
  ),
  'cutline-fill/other-metal-or-fill': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M46 44H168V76H46Z" fill={tone.silver} />
      <Shine
        at={[
          [70, 66],
          [100, 66],
          [130, 66],
        ]}
      />
    </Close>
  ),
  'cutline-fill/scored-floor': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M46 44H168V76H46Z" fill={tone.rustDeep} />
      <path
        d="M54 72l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24m2 24l8-24"
        stroke={tone.bronze}
        strokeWidth="1.8"
      />
    </Close>
  ),
  'cutline-fill/soil-or-crust': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M46 44H168V76H46Z" fill={tone.soil} />
      <Grains points={strewn('line-soil', 15, [58, 48, 98, 24], 10)} of={tone.iron} size={3} />
      <Stipple seed="line-soil-dots" box={[58, 47, 98, 26]} count={24} />
    </Close>
  ),
  'relief-back/hollow-behind': (id) => (
    <Close id={id}>
      <path
        d="M46 60H66Q76 30 88 60H102Q112 30 124 60H168V70H130Q112 50 96 70H94Q76 50 60 70H46Z"
        fill={tone.bronze}
      />
      <Strokes d="M72 46Q77 42 82 46M108 46Q113 42 118 46" of={tone.gloss} width={2} />
      <Arrow at={[77, 60]} from={[77, 100]} />
    </Close>
  ),
  'relief-back/plain-back': (id) => (
    <Close id={id}>
      <path d="M46 60H66Q76 30 88 60H102Q112 30 124 60H168V76H46Z" fill={tone.bronze} />
      <Strokes d="M52 74l10-10M66 74l18-18M84 74l12-12M102 74l18-18M120 74l12-12M138 74l12-12" width={0.8} />
      <Arrow at={[77, 78]} from={[77, 104]} />
    </Close>
  ),
  'relief-back/hollow-as-a-whole': (id) => (
    <Close id={id}>
      <path
        d="M46 82Q56 44 74 44Q78 32 86 44H100Q106 30 114 44H140Q158 48 168 82V92H160Q150 60 136 58H78Q64 60 56 92H46Z"
        fill={tone.bronze}
      />
      <Arrow at={[107, 62]} from={[107, 102]} />
    </Close>
  ),
  'dots-order/rows-or-pattern': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d={grid.join('')} fill={tone.rustDeep} />
    </Close>
  ),
  'dots-order/in-one-place': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d={strewn('cluster-pits', 24, [84, 44, 34, 32], 7)
          .map(([x, y]) => dot(Math.round(x), Math.round(y), 3))
          .join('')}
        fill={tone.rustDeep}
      />
      <Shine
        at={[
          [66, 40],
          [136, 92],
        ]}
      />
    </Close>
  ),
  'dots-order/everywhere': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d={strewn('all-pits', 46, [58, 14, 96, 92], 12)
          .map(([x, y], index) => dot(Math.round(x), Math.round(y), 2 + (index % 3)))
          .join('')}
        fill={tone.rustDeep}
      />
    </Close>
  ),
  'dots-likeness/same-outline': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d={struck.map(([x, y]) => star(x, y, 15)).join('')} fill={tone.gold} />
      <path d={struck.map(([x, y, deep]) => star(x, y, deep)).join('')} fill={tone.rustDeep} />
    </Close>
  ),
  'dots-likeness/same-in-all': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d={`${dot(74, 40, 9)}${dot(107, 40, 9)}${dot(140, 40, 9)}${dot(74, 76, 9)}${dot(107, 76, 9)}${dot(140, 76, 9)}`}
        fill={tone.rustDeep}
      />
      <path
        d="M68 45a8 8 0 0 0 12 0m21 0a8 8 0 0 0 12 0m21 0a8 8 0 0 0 12 0M68 81a8 8 0 0 0 12 0m21 0a8 8 0 0 0 12 0m21 0a8 8 0 0 0 12 0"
        stroke={tone.gloss}
        strokeWidth="1.6"
      />
    </Close>
  ),
  'dots-likeness/every-size': (id) => (
    <Close id={id} ground={tone.bronze}>
      {[
        [72, 38, 12],
        [104, 30, 4],
        [134, 42, 9],
        [92, 62, 6],
        [118, 74, 14],
        [70, 80, 5],
        [88, 96, 8],
        [146, 66, 3],
      ].map(([x = 0, y = 0, r = 1]) => (
        <path key={x} d={shard(`size-${x}`, [x, y], r, r * 0.85, 0.3, 9)} fill={tone.rustDeep} />
      ))}
    </Close>
  ),
  'dots-likeness/tiny-alike': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Stipple seed="pinpricks" box={[58, 12, 96, 96]} count={150} size={2} />
    </Close>
  ),
  'toolmark-and-crust/crust-over-them': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Strokes d={marks} />
      <Flat d={blot('over-marks', [92, 54], 26, 20, 0.2)} of={tone.green} />
      <Flat d={blot('over-marks-b', [136, 84], 16, 13, 0.2)} of={tone.green} />
      <Stipple seed="over-marks-dots" box={[74, 42, 38, 24]} count={16} />
    </Close>
  ),
  'toolmark-and-crust/cut-through-crust': (id) => (
    <Close id={id} ground={tone.green}>
      <Stipple seed="through-dots" box={[58, 12, 96, 96]} count={40} />
      <Strokes d={marks} width={3.4} />
      <Strokes d={marks} of={tone.gold} width={1.8} />
    </Close>
  ),
  'toolmark-and-crust/stop-at-crust': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Strokes d={marks} />
      <path d="M112 6L106 30L116 50L104 70L114 90L106 114H170V6Z" fill={tone.green} />
      <Stipple seed="stop-dots" box={[120, 16, 32, 88]} count={26} />
      <Arrow at={[106, 64]} from={[76, 104]} />
    </Close>
  ),
}

const marks =
  'M50 34l110-16M50 44l110-16M50 54l110-16M50 64l110-16M50 74l110-16M50 84l110-16M50 94l110-16M50 104l110-16'
/** A punch with three sides: how far its floor reaches to the rim tells how deep it was struck. */
const star = (x: number, y: number, r: number) =>
  `M${x} ${y - r}L${x + Math.round(r * 0.9)} ${y + Math.round(r * 0.6)}H${x - Math.round(r * 0.9)}Z`
const struck = [
  [76, 38, 3],
  [107, 38, 11],
  [138, 38, 6],
  [76, 80, 12],
  [107, 80, 6],
  [138, 80, 2],
] as const
const grid = [28, 46, 74, 92].flatMap((y) => [67, 83, 99, 115, 131, 147].map((x) => dot(x, y, 4)))
