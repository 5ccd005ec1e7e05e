import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, cracked } from './kit/lines.ts'
import { Flat, Grains, Mound, Powder, Stipple, Strokes } from './kit/marks.tsx'
import { Weight } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const spot = [23, 66] as const
const detail = 'M10 58H36M9 62H37'

/** Lead, tin and pewter: one weight with two cut lines, one cut through its skin. */
export const leadAndTin: Drawings = {
  'seen/white-powder': (id) => (
    <>
      <Weight of={tone.lead}>
        <Strokes d={detail} />
        <Powder seed="white-small" at={[23, 74]} across={18} up={18} count={34} of={tone.white} size={2} />
        <Grains points={strewn('white-below', 16, [4, 104, 40, 10], 4)} of={tone.white} size={2} />
      </Weight>
      <Lens id={id} spot={spot}>
        <Block seed="lead" metal={tone.lead}>
          <Powder seed="white-a" at={[104, 60]} across={42} up={18} count={64} of={tone.white} size={2.8} />
          <Powder seed="white-b" at={[100, 90]} across={22} up={12} count={16} of={tone.white} size={2.6} />
        </Block>
        <Arrow at={[108, 88]} from={[128, 98]} />
      </Lens>
    </>
  ),
  'seen/white-hard-crust': (id) => (
    <>
      <Weight of={tone.white}>
        <Strokes d={cracked('hard-small', [12, 70], [36, 84], 3)} />
      </Weight>
      <Lens id={id} spot={spot}>
        <Block seed="hard" layers={[{ of: tone.white, deep: 13, rough: 2 }]} metal={tone.lead} rough={1.6}>
          <Strokes d={cracked('hard-a', [84, 37], [98, 92], 4)} width={1.4} />
          <Strokes d={cracked('hard-b', [92, 58], [134, 48], 3)} />
          <Strokes d="M64 56h9M70 66h8M118 64h10M126 70h9M110 72h7" of={tone.soft} />
        </Block>
      </Lens>
    </>
  ),
  'seen/grey-skin': (id) => (
    <>
      <Weight of={tone.lead}>
        <Strokes d={`${detail}M8 84H38M7 88H39`} />
      </Weight>
      <Lens id={id} spot={spot}>
        <Block seed="skin" layers={[{ of: tone.lead, deep: 3, rough: 0.3 }]} metal={tone.silver} rough={0.3}>
          <Strokes d="M52 52H160M52 56H160" width={1.6} />
          <Strokes d="M90 60L84 80M94 60L89 80M124 60L128 80M128 60L133 80" />
          <Strokes d="M64 64H78M100 66H116" of={tone.gloss} />
        </Block>
        <Arrow at={[104, 82]} from={[94, 102]} />
      </Lens>
    </>
  ),
  'seen/red-yellow-layer': (id) => (
    <>
      <Weight of={tone.lead}>
        <Strokes d={detail} />
        <Flat d={blot('red-lead-small', [17, 78], 9, 12)} of={tone.red} />
        <Flat d={blot('litharge-small', [31, 82], 6, 9)} of={tone.yellow} />
      </Weight>
      <Lens id={id} spot={[22, 74]}>
        <Block
          seed="coloured"
          layers={[
            { of: tone.white, deep: 5 },
            { of: tone.red, deep: 6, rough: 2 },
            { of: tone.yellow, deep: 5, rough: 2 },
          ]}
          metal={tone.lead}
        >
          <Flat d={blot('red-lead', [90, 58], 25, 13)} of={tone.red} />
          <Strokes d="M74 54h12M78 60h16M92 52h14M96 64h12M82 66h8" />
          <Flat d={blot('litharge', [130, 64], 16, 9)} of={tone.yellow} />
          <Stipple seed="litharge-dots" box={[119, 59, 22, 10]} count={10} size={1.6} />
        </Block>
      </Lens>
    </>
  ),
  'seen/grey-warts': (id) => (
    <>
      <Weight of={tone.silver}>
        <Strokes d={detail} />
        {strewn('grey-warts-small', 7, [11, 68, 24, 26], 10).map(([x, y]) => (
          <circle key={x} cx={Math.round(x)} cy={Math.round(y)} r="3.2" fill={tone.lead} />
        ))}
      </Weight>
      <Lens id={id} spot={[23, 74]}>
        <Block seed="pewter" metal={tone.silver} rough={0.5}>
          <Mound at={[80, 52]} r={11} up={13} of={tone.lead} />
          <Mound at={[134, 52]} r={9} up={11} of={tone.lead} />
          <Mound at={[86, 76]} r={10} up={12} of={tone.lead} />
          <Flat d="M100 70C101 50 111 48 117 51L113 57L120 60L114 65L121 71Q110 76 100 70Z" of={tone.lead} />
          <Grains points={strewn('crumbs', 16, [119, 62, 26, 16], 5)} of={tone.lead} size={2.6} />
        </Block>
        <Arrow at={[119, 54]} from={[122, 26]} />
      </Lens>
    </>
  ),
  'seen/black-crust': (id) => (
    <>
      <Weight of={tone.lead}>
        <Strokes d={detail} />
        <Flat d={blot('black-small', [24, 80], 14, 14)} of={tone.black} />
      </Weight>
      <Lens id={id} spot={[23, 74]}>
        <Block
          seed="plates"
          layers={[
            { of: tone.black, deep: 6 },
            { of: tone.ironDeep, deep: 4 },
            { of: tone.black, deep: 6, rough: 2 },
          ]}
          metal={tone.lead}
          rough={1.6}
        >
          <path
            d={`${cracked('plate-a', [78, 37], [72, 80], 3)}${cracked('plate-b', [108, 37], [112, 80], 3)}${cracked('plate-c', [138, 37], [140, 80], 3)}${cracked('plate-d', [58, 58], [156, 56], 3, 9)}`}
            stroke={tone.soft}
            strokeWidth="1.8"
          />
          <Flat d="M114 58L137 57L139 77L113 78Z" of={tone.lead} />
        </Block>
        <Arrow at={[96, 50]} from={[92, 24]} />
      </Lens>
    </>
  ),
}
