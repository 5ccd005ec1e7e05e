import { Block } from './kit/block.tsx'
import { strewn, type Box } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { shard } from './kit/lines.ts'
import { Flat, Grains, Powder, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { Bag, Knife } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const blade = 'M36 62Q44 44 92 42H104V46H128V56H104V62Z'

/** What has changed, and what came off. */
export const changes: Drawings = {
  'seen/powder-in-bag': () => (
    <>
      <Bag />
      <Flat d={blade} of={tone.green} />
      <Flat d={shard('bag-scar', [70, 52], 9, 6)} of={tone.greenPale} />
      <Powder
        seed="under-one-spot"
        at={[70, 100]}
        across={24}
        up={8}
        count={70}
        of={tone.greenPale}
        size={2.4}
      />
      <Grains
        points={[
          [69, 66],
          [72, 73],
          [67, 79],
          [73, 86],
        ]}
        of={tone.greenPale}
        size={2.4}
      />
      <Arrow at={[84, 94]} from={[108, 80]} />
    </>
  ),
  'seen/loose-parts': () => (
    <>
      <Bag />
      <circle cx="64" cy="62" r="26" fill={tone.bronze} stroke={tone.ink} />
      <circle cx="64" cy="62" r="13" fill={tone.black} />
      <Strokes d="M53 57Q64 46 75 57" of={tone.soft} width={1.6} />
      {[
        [64, 42],
        [82, 56],
        [76, 78],
        [52, 78],
        [46, 56],
      ].map(([x, y]) => (
        <circle key={x} cx={x} cy={y} r="3" fill={tone.gold} />
      ))}
      <circle cx="116" cy="92" r="12" fill={tone.glass} />
      <Shine at={[[112, 96]]} />
      <Arrow at={[106, 84]} from={[92, 70]} />
    </>
  ),
  'seen/salt-bloom': (id) => (
    <>
      <Knife of={tone.soil}>
        <Stipple seed="salt-soil" box={[12, 24, 18, 58]} count={20} />
        <path d={fur('fur-small', 9, [13, 34, 16, 48], 4)} stroke={tone.white} strokeWidth="1.5" />
      </Knife>
      <Lens id={id} spot={[21, 52]}>
        <Block seed="salty" layers={[{ of: tone.soil, deep: 12, rough: 2 }]} metal={tone.iron} rough={2}>
          <Stipple seed="salt-ground" box={[58, 40, 98, 38]} count={30} />
          <path d={needles} strokeWidth="2.8" strokeLinecap="round" />
          <path d={needles} stroke={tone.white} strokeWidth="1.5" strokeLinecap="round" />
        </Block>
        <Arrow at={[108, 44]} from={[118, 20]} />
      </Lens>
    </>
  ),
  'seen/no-change-seen': () => (
    <>
      <path d="M6 20H66V104H6Z" fill={tone.white} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M11 25H61V88H11Z" fill={tone.soil} />
      <path d="M13 95h20m4 0h8" stroke={tone.soft} strokeWidth="2.4" />
      <g transform="translate(20 26) scale(0.52)">
        <Dated />
      </g>
      <g transform="translate(102 4)">
        <Dated />
      </g>
      <path d="M75 56H91M75 65H91" stroke={tone.ink} strokeWidth="3" />
    </>
  ),
}

/** The same knife then and now: the same three spots in the same places. */
function Dated() {
  return (
    <Knife of={tone.rust}>
      <g fill={tone.bright}>
        <circle cx="16" cy="38" r="3" />
        <circle cx="25" cy="56" r="4" />
        <circle cx="15" cy="70" r="2.6" />
      </g>
    </Knife>
  )
}

/** Needles that stand out from one foot, many times. */
function fur(word: string, count: number, box: Box, long: number, apart = 6): string {
  const side = Math.round(long * 0.8)
  return strewn(word, count, box, apart)
    .map(
      ([x, y]) =>
        `M${Math.round(x)} ${Math.round(y)}l${-side}-${side}m${side} ${side}l-2-${long}m2 ${long}l3-${long}m-3 ${long}l${side}-${side - 1}`,
    )
    .join('')
}
const needles = fur('fur', 20, [68, 50, 76, 28], 9, 13)
