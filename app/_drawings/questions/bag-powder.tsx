import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { shard } from '../kit/lines.ts'
import { Flat, Glint, Grains, Powder, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { Bag } from '../kit/objects.tsx'
import { tone } from '../kit/tones.ts'

const knife = 'M36 62Q44 44 92 42H104V46H128V56H104V62Z'

/** The find in its bag, with the scar it may have. */
function Bagged({ scar = false, children }: { readonly scar?: boolean; readonly children?: ReactNode }) {
  return (
    <>
      <Bag />
      <Flat d={knife} of={tone.rust} />
      {scar && <Flat d={shard('bag-scar', [70, 52], 9, 6)} of={tone.bright} />}
      {children}
    </>
  )
}

/** The lowest corner of the closed bag, near by. */
function Corner({ id, children }: { readonly id: string; readonly children: ReactNode }) {
  return (
    <Close id={id}>
      <path d="M46 0H168V94Q107 100 46 94Z" fill={tone.wash} />
      <Strokes d="M62 16L68 52M148 18L142 44" of={tone.soft} width={1.6} />
      {children}
    </Close>
  )
}

/** One bag after the other, the second clean when it was taken. */
function Again({ children }: { readonly children?: ReactNode }) {
  return (
    <>
      <g transform="translate(0 32) scale(0.46)">
        <Bagged scar>
          <Powder seed="again-old" at={[72, 100]} across={40} up={8} count={34} of={tone.bright} size={4} />
        </Bagged>
      </g>
      <path d="M73 60H87M81 54L87 60L81 66" stroke={tone.ink} strokeWidth="2.6" />
      <g transform="translate(86 32) scale(0.46)">
        <Bagged scar>{children}</Bagged>
      </g>
    </>
  )
}

const shards = strewn('crumb', 9, [68, 70, 78, 20], 17)

/** What powder in a bag looks like, where it lies, whether it comes again. */
export const bagPowder: Drawings = {
  'bag-powder-look/bright-and-fresh': (id) => (
    <Corner id={id}>
      <Powder seed="fresh" at={[107, 84]} across={34} up={12} count={60} of={tone.bright} size={3} />
      <Glint at={[84, 60]} r={8} />
      <Glint at={[130, 64]} r={6} />
    </Corner>
  ),
  'bag-powder-look/dull-crumbs': (id) => (
    <Corner id={id}>
      {shards.map(([x, y], index) => (
        <path
          key={x}
          d={shard(`crumb-${index}`, [x, y], 8, 6, 0.25, 6)}
          fill={index % 2 === 0 ? tone.rust : tone.rustDeep}
        />
      ))}
    </Corner>
  ),
  'bag-powder-look/soil-grains': (id) => (
    <Corner id={id}>
      <Flat d="M46 78Q70 66 100 74T168 72V94Q107 100 46 94Z" of={tone.soil} />
      <Stipple seed="bag-earth" box={[56, 76, 102, 18]} count={44} size={1.6} />
      <Grains points={strewn('bag-sand', 13, [60, 76, 92, 17], 12)} of={tone.iron} size={5} />
    </Corner>
  ),
  'bag-powder-look/glassy-or-foam': (id) => (
    <Corner id={id}>
      <path
        d="M66 76a8 8 0 0 1 13-5a8 8 0 0 1 13 6a8 8 0 0 1-5 13a9 9 0 0 1-15 0a8 8 0 0 1-6-14z"
        fill={tone.white}
      />
      <path d="M73 77a2 2 0 1 1 4 0a2 2 0 1 1-4 0zM80 84a2 2 0 1 1 4 0a2 2 0 1 1-4 0z" fill={tone.soft} />
      {[
        [106, 84],
        [120, 76],
        [124, 89],
      ].map(([x = 0, y = 0]) => (
        <circle key={x} cx={x} cy={y} r="6" fill={tone.glass} />
      ))}
      <Strokes
        d="M102 83a4 4 0 0 1 3-4M116 75a4 4 0 0 1 3-4M120 88a4 4 0 0 1 3-4"
        of={tone.gloss}
        width={1.6}
      />
      <path d="M134 78L150 70L156 84L140 92Z" fill={tone.white} />
      <Strokes d="M139 80L149 75M141 85L151 80" of={tone.soft} />
    </Corner>
  ),
  'bag-powder-look/fibres-or-pellets': (id) => (
    <Corner id={id}>
      <path d="M62 84Q76 62 90 82T112 80M70 92Q88 74 104 92" strokeWidth="3.4" strokeLinecap="round" />
      <path
        d="M62 84Q76 62 90 82T112 80M70 92Q88 74 104 92"
        stroke={tone.bone}
        strokeWidth="1.8"
        strokeLinecap="round"
      />
      <path d="M112 66L138 58L140 62L114 71Z" fill={tone.wood} />
      <g strokeLinecap="round">
        <path d="M120 82l5 3M132 76l5-2M136 88l5 1M148 82l3-4M126 92l4-3" strokeWidth="6.4" />
        <path
          d="M120 82l5 3M132 76l5-2M136 88l5 1M148 82l3-4M126 92l4-3"
          stroke={tone.leather}
          strokeWidth="4.4"
        />
      </g>
    </Corner>
  ),
  'bag-powder-place/below-one-spot': () => (
    <Bagged scar>
      <Powder seed="below-spot" at={[70, 100]} across={20} up={8} count={52} of={tone.bright} size={2.8} />
      <path d="M70 66V88" stroke={tone.ink} strokeWidth="1.6" strokeDasharray="3 3" />
    </Bagged>
  ),
  'bag-powder-place/where-it-rubs': () => (
    <>
      <Bag />
      <g transform="translate(0 42)">
        <Flat d={knife} of={tone.rust} />
      </g>
      <Powder seed="rub-a" at={[36, 106]} across={13} up={5} count={26} of={tone.bright} size={2.8} />
      <Powder seed="rub-b" at={[128, 103]} across={13} up={6} count={26} of={tone.bright} size={2.8} />
      <Arrow at={[38, 100]} from={[38, 66]} />
      <Arrow at={[128, 96]} from={[128, 62]} />
    </>
  ),
  'bag-powder-place/all-over-the-bag': () => (
    <Bagged>
      <Grains points={strewn('all-bag', 80, [20, 30, 118, 78], 8)} of={tone.bright} size={2.8} />
    </Bagged>
  ),
  'bag-powder-again/came-again': () => (
    <Again>
      <Powder seed="again-new" at={[72, 100]} across={40} up={8} count={34} of={tone.bright} size={4} />
    </Again>
  ),
  'bag-powder-again/stayed-clean': () => (
    <Again>
      <Shine
        at={[
          [36, 100],
          [100, 100],
        ]}
        of={tone.soft}
      />
    </Again>
  ),
}
