import type { ReactNode } from 'react'
import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot } from './kit/lines.ts'
import { Flat, Stipple, Strokes } from './kit/marks.tsx'
import { Strap, knifeOutline } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

/** A magnet on a thread beside the find: how far it is drawn from the plumb line. */
function Magnet({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M30 8H70" stroke={tone.ink} strokeWidth="3" />
      <path d="M50 10V102" stroke={tone.soft} strokeDasharray="2 4" />
      <path
        d="M98 58Q122 44 148 54Q158 70 150 92Q128 106 104 96Q95 84 98 58Z"
        fill={tone.rust}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <Stipple seed="lump-grain" box={[104, 58, 42, 36]} count={24} />
      {children}
    </>
  )
}

const bar = (
  <g stroke={tone.ink}>
    <path d="M42 66H58V90H42Z" fill={tone.silver} />
    <path d="M42 80H58V90H42Z" fill={tone.red} />
    <path d="M46 80v10m4-10v10m4-10v10" />
  </g>
)
const hung = (
  <>
    <path d="M50 8V66" stroke={tone.ink} strokeWidth="1.6" />
    {bar}
  </>
)

/** A radiograph: dark film, the denser the lighter. */
function Film({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M14 8H146V112H14Z" fill={tone.film} stroke={tone.ink} strokeWidth="1.4" />
      <g transform="translate(60 7) scale(0.86)" stroke={tone.filmLine}>
        {children}
      </g>
    </>
  )
}
const halo = 'M12 116V88H4V32Q6 10 30 1Q40 34 38 88H28V116Z'
const haze = <path d={halo} fill={tone.filmLine} opacity="0.28" stroke="none" />

const detail = 'M88 36L76 80M93 36L82 80M121 36L132 80M126 36L138 80'

const Patches = ({ of, all = false }: { readonly of: readonly string[]; readonly all?: boolean }) => (
  <g transform="translate(58 0)">
    <Strap of={tone.silver}>
      <path d={of.join('')} fill={tone.green} />
      {all && <Stipple seed="all-over" box={[9, 24, 28, 68]} count={40} />}
    </Strap>
  </g>
)

/** How much metal the film shows: asked of the radiograph and of the core. */
const filmed = {
  solid: () => (
    <Film>
      {haze}
      <path d={knifeOutline} fill={tone.filmLine} />
    </Film>
  ),
  partial: () => (
    <Film>
      {haze}
      <path
        d="M12 62Q22 56 30 64L33 84H24V100L14 96V84H9ZM18 18Q30 10 30 30Q24 44 16 38Z"
        fill={tone.filmLine}
        stroke="none"
      />
      <path d={knifeOutline} fill="none" strokeDasharray="3 3" />
    </Film>
  ),
  none: () => (
    <Film>
      {haze}
      <path d={knifeOutline} fill={tone.film} strokeDasharray="3 3" />
    </Film>
  ),
}

/** What a record asks of every part: magnet, surface, core, how much. */
export const record: Drawings = {
  'magnet/strong': () => (
    <Magnet>
      <path d="M50 8L74 78" stroke={tone.ink} strokeWidth="1.6" />
      <g transform="translate(7 128) rotate(-90)">{bar}</g>
      <path d="M60 100H80M60 106H74" stroke={tone.ink} strokeWidth="1.6" />
    </Magnet>
  ),
  'magnet/weak': () => (
    <Magnet>
      <g transform="rotate(-14 50 8)">{hung}</g>
    </Magnet>
  ),
  'magnet/none': () => <Magnet>{hung}</Magnet>,
  'original_surface/visible': (id) => (
    <>
      <Strap of={tone.green}>
        <Strokes d="M12 36H34M12 40H34M12 74H34M12 78H34M14 70L23 46L32 70" />
      </Strap>
      <Lens id={id} spot={[23, 56]}>
        <Block seed="os" layers={[{ of: tone.green, deep: 6, rough: 0.5 }]} metal={tone.bronze} rough={0.4}>
          <Strokes d={detail} width={1.8} />
          <Strokes d="M100 46H114M98 54H116" of={tone.gloss} width={1.6} />
        </Block>
      </Lens>
    </>
  ),
  'original_surface/under-crust': (id) => (
    <>
      <Strap of={tone.soil}>
        <Stipple seed="os-soil" box={[10, 28, 26, 64]} count={26} />
        <Flat d={blot('os-window', [23, 58], 10, 13)} of={tone.green} />
        <Strokes d="M17 66L22 50M22 68L28 52" />
      </Strap>
      <Lens id={id} spot={[23, 56]}>
        <Block
          seed="os-under"
          layers={[
            { of: tone.soil, deep: 10, rough: 2 },
            { of: tone.green, deep: 6, rough: 0.5 },
          ]}
          metal={tone.bronze}
          rough={2}
        >
          <Stipple seed="os-soil-big" box={[58, 40, 98, 44]} count={40} />
          <Flat d={blot('os-hole', [106, 60], 26, 12, 0.15)} of={tone.green} />
          <Strokes d="M94 52L91 69M100 49L97 72M114 49L118 71M120 51L124 68" width={1.8} />
        </Block>
        <Arrow at={[107, 60]} from={[120, 28]} />
      </Lens>
    </>
  ),
  'original_surface/lost': (id) => (
    <>
      <Strap of={tone.green}>
        <path d={blot('os-lost', [23, 58], 14, 32, 0.35, 14)} fill={tone.greenDeep} />
      </Strap>
      <Lens id={id} spot={[23, 56]}>
        <Block seed="os-gone" layers={[{ of: tone.green, deep: 6, rough: 5 }]} metal={tone.bronze} rough={5}>
          {strewn('pits', 8, [66, 48, 82, 26], 20).map(([x, y], index) => (
            <Flat key={x} d={blot(`pit-${index}`, [x, y], 8, 4, 0.35)} of={tone.greenDeep} />
          ))}
        </Block>
      </Lens>
    </>
  ),
  'core/solid': filmed.solid,
  'core/partial': filmed.partial,
  'core/none': filmed.none,
  'radiograph/core-solid': filmed.solid,
  'radiograph/core-partial': filmed.partial,
  'radiograph/no-core': filmed.none,
  'radiograph/bright-lines': () => (
    <Film>
      <path d={knifeOutline} fill={tone.filmLine} opacity="0.45" stroke="none" />
      <path d="M12 80C24 72 12 58 22 50S20 30 28 20M30 80C20 72 30 60 24 54" strokeWidth="2.6" />
    </Film>
  ),
  'radiograph/dense-specks': () => (
    <Film>
      <path d={knifeOutline} fill={tone.filmLine} opacity="0.45" stroke="none" />
      <path
        d="M14 40h0m6 10h0m-5 12h0m10 3h0m2-20h0m-4-14h0m-6 34h0m10 6h0m-6 18h0m2 8h0"
        strokeWidth="3.4"
        strokeLinecap="round"
      />
    </Film>
  ),
  'extent/trace': () => <Patches of={[blot('trace', [28, 62], 3.4, 3)]} />,
  'extent/patches': () => (
    <Patches
      of={[blot('few-a', [16, 40], 6, 8), blot('few-b', [30, 60], 7, 8), blot('few-c', [17, 78], 6, 7)]}
    />
  ),
  'extent/most': () => (
    <Patches
      of={[
        'M6 20L13 27L20 24L29 30L40 25V58L33 64L40 70V78Q38 96 28 106L18 104L22 94L12 96L10 88L6 82V52L12 46L6 40Z',
      ]}
    />
  ),
  'extent/all': () => <Patches all of={['M8 12H38V76Q38 99 23 111Q8 99 8 76Z']} />,
}
