import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, cracked, shard } from './kit/lines.ts'
import { Bead, Flat, Glint, Grains, Powder, Shadow, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { Knife } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const crust = [{ of: tone.rust, deep: 11, rough: 2 }]
const Rusty = () => (
  <Knife of={tone.rust}>
    <Stipple seed="rusty" box={[12, 20, 18, 62]} count={26} />
  </Knife>
)
const grain = <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={46} />

/** Iron: one knife, one cut through its crust. */
export const iron: Drawings = {
  'seen/orange-brown-crust': (id) => (
    <>
      <Rusty />
      <Lens id={id} spot={[21, 52]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
        </Block>
      </Lens>
    </>
  ),
  'seen/soil-concretion': (id) => (
    <>
      <Knife of={tone.rust} />
      <Flat d={blot('lump', [21, 54], 19, 36, 0.14)} of={tone.soil} />
      <Grains points={strewn('lump-stones', 12, [10, 30, 22, 48], 9)} of={tone.iron} size={4} />
      <Lens id={id} spot={[21, 52]}>
        <Block seed="cemented" layers={[{ of: tone.soil, deep: 20, rough: 3 }]} rough={4}>
          <Stipple seed="cement" box={[58, 42, 98, 56]} count={44} size={1.2} />
          <Flat d={shard('stone-a', [78, 58], 10, 7)} of={tone.iron} />
          <Flat d={shard('stone-b', [136, 86], 9, 6)} of={tone.iron} />
          <Flat d={shard('stone-c', [88, 88], 7, 5)} of={tone.ironDeep} />
          <Flat d="M112 72Q106 56 120 46Q136 54 130 72Q121 78 112 72Z" of={tone.bone} />
          <Strokes d="M121 75Q112 62 116 49M121 75Q119 60 120 46M121 75Q128 62 126 50" />
        </Block>
      </Lens>
    </>
  ),
  'seen/bright-orange-spots': (id) => (
    <>
      <Rusty />
      <Grains
        points={[
          [15, 36],
          [26, 38],
          [22, 52],
          [27, 70],
          [15, 72],
          [23, 25],
        ]}
        of={tone.bright}
        size={4}
      />
      <Lens id={id} spot={[22, 52]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          <Flat d={shard('scar', [116, 58], 17, 9)} of={tone.rustDeep} />
          <Powder seed="fresh" at={[117, 58]} across={15} up={8} count={40} of={tone.bright} />
          <Strokes d={cracked('fresh-crack', [70, 38], [90, 84], 3)} width={2.4} />
          <Powder seed="fresh-in-crack" at={[79, 58]} across={6} up={14} count={24} of={tone.bright} />
        </Block>
        <Arrow at={[124, 50]} from={[141, 30]} />
      </Lens>
    </>
  ),
  'seen/orange-droplets': (id) => (
    <>
      <Rusty />
      {(
        [
          [16, 40, 3],
          [27, 44, 3.4],
          [20, 68, 4],
          [27, 76, 2.6],
        ] as const
      ).map(([x, y, r]) => (
        <circle key={y} cx={x} cy={y} r={r} fill={tone.bright} />
      ))}
      <Lens id={id} spot={[22, 55]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          <Bead at={[82, 50]} r={8} of={tone.bright} />
          <Bead at={[112, 58]} r={13} of={tone.bright} />
          <Bead at={[140, 50]} r={6} of={tone.bright} />
          <Bead at={[88, 72]} r={6.5} of={tone.bright} />
          <Bead at={[136, 71]} r={8} of={tone.bright} />
        </Block>
      </Lens>
    </>
  ),
  'seen/dry-orange-blisters': (id) => (
    <>
      <Rusty />
      {[
        [16, 40],
        [27, 44],
        [20, 68],
        [27, 76],
      ].map(([x, y]) => (
        <circle key={y} cx={x} cy={y} r="3.4" fill={tone.bright} />
      ))}
      <Lens id={id} spot={[22, 55]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          <Flat d="M72 56Q72 41 83 41T94 56Q83 61 72 56Z" of={tone.bright} />
          <Strokes d="M84 42l-2 5 4 3" />
          <Broken at={[115, 64]} r={16} />
          <Broken at={[84, 77]} r={9} />
          <Flat d="M131 56Q131 45 140 45T149 56Q140 60 131 56Z" of={tone.bright} />
        </Block>
        <Arrow at={[115, 56]} from={[122, 28]} />
      </Lens>
    </>
  ),
  'seen/lamination-cracks': (id) => (
    <>
      <Rusty />
      <Strokes
        d={`${cracked('along-a', [14, 26], [13, 82], 1)}${cracked('along-b', [22, 14], [19, 84], 1)}${cracked('along-c', [28, 20], [27, 83], 1)}`}
        width={1.7}
      />
      <Lens id={id} spot={[20, 55]}>
        <g>
          <path d="M50 40Q100 20 160 34V46Q100 36 50 52Z" fill={tone.rust} />
          <path d="M50 58Q100 42 160 52V60Q110 52 50 66Z" fill={tone.ironDeep} />
          <path d="M50 70Q110 56 160 64V73Q110 66 50 78Z" fill={tone.rust} />
          <path d="M50 82Q100 72 160 76V86Q104 82 50 90Z" fill={tone.iron} />
          <path d="M50 94Q100 90 160 92V114H50Z" fill={tone.ironDeep} />
        </g>
        <path
          stroke="none"
          d="M50 52Q100 36 160 46V52Q100 42 50 58ZM50 66Q110 52 160 60V64Q110 56 50 70ZM50 78Q110 66 160 73V76Q100 72 50 82ZM50 90Q104 82 160 86V92Q100 90 50 94Z"
          fill={tone.black}
        />
        <Arrow at={[106, 43]} from={[118, 20]} />
      </Lens>
    </>
  ),
  'seen/loose-flakes': (id) => (
    <>
      <Rusty />
      <Flat d={shard('scar-small', [21, 50], 8, 10)} of={tone.iron} />
      <Flat d={shard('off-small', [42, 104], 6, 5)} of={tone.rust} />
      <Lens id={id} spot={[21, 52]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          <Flat d={shard('fresh-scar', [100, 64], 27, 12)} of={tone.iron} />
          <Strokes d="M84 64l9 -6M94 68l12 -8M108 67l9 -6" of={tone.soft} />
          <Shadow d="M80 60L124 66L132 46L96 40Z" />
          <Flat d="M78 50Q98 28 126 26L136 46Q112 42 90 60Z" of={tone.rust} />
          <Flat d="M78 50Q98 28 126 26L127 30Q100 32 81 53Z" of={tone.rustDeep} />
        </Block>
        <Arrow at={[118, 60]} from={[141, 72]} />
      </Lens>
    </>
  ),
  'seen/black-compact-layer': (id) => (
    <>
      <Rusty />
      <Flat d={shard('chip-small', [21, 52], 9, 13)} of={tone.black} />
      <Lens id={id} spot={[21, 52]}>
        <Block seed="black-in-iron" layers={[{ of: tone.black, deep: 11 }]} surface={tone.black}>
          <Shine
            at={[
              [64, 74],
              [72, 56],
              [86, 50],
            ]}
          />
          <Flat d="M160 32L112 34L104 42L108 50L98 58L103 66L94 74L97 80H160Z" of={tone.rust} />
          <Flat d="M97 80L94 74L91 72L92 82L160 84V78Z" of={tone.rustDeep} />
          <Stipple seed="brown-left" box={[112, 40, 44, 38]} count={36} size={1.2} />
        </Block>
        <Arrow at={[86, 70]} from={[78, 94]} />
      </Lens>
    </>
  ),
  'seen/blue-powder': (id) => (
    <>
      <Rusty />
      <Powder seed="blue-small" at={[22, 56]} across={11} up={20} count={26} of={tone.blue} size={1.8} />
      <Lens id={id} spot={[22, 52]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          <Powder seed="blue-a" at={[98, 58]} across={30} up={15} count={46} of={tone.blue} size={2.6} />
          <Powder seed="blue-b" at={[132, 66]} across={16} up={8} count={22} of={tone.blue} />
        </Block>
        <Arrow at={[100, 50]} from={[114, 26]} />
      </Lens>
    </>
  ),
  'seen/brassy-glint': (id) => (
    <>
      <Rusty />
      <Grains points={strewn('glints-small', 9, [12, 30, 18, 48], 8)} of={tone.gold} size={1.6} />
      <Lens id={id} spot={[22, 52]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          {grain}
          {strewn('cubes', 9, [70, 45, 74, 44], 20).map(([x, y]) => (
            <Cube key={x} x={Math.round(x)} y={Math.round(y)} />
          ))}
          <Glint at={[88, 50]} r={9} />
          <Glint at={[128, 66]} r={8} />
        </Block>
      </Lens>
    </>
  ),
  'seen/pale-yellow-bloom': (id) => (
    <>
      <Rusty />
      <Flat d="M10 86H29L30 113H9Z" of={tone.wood} />
      <Strokes d="M14 87V112M19 87V112M24 87V112" of={tone.soft} />
      <Powder seed="bloom-small" at={[21, 80]} across={13} up={12} count={24} of={tone.yellow} size={1.4} />
      <Lens id={id} spot={[21, 76]}>
        <Block seed="even-crust" layers={crust} rough={2}>
          <Flat d="M50 30H88Q84 58 87 114H50Z" of={tone.wood} />
          <Strokes
            d="M60 30V112M67 30Q65 70 68 112M75 30Q73 70 76 112M82 30Q79 70 81 112"
            of={tone.rustDeep}
          />
          <Powder seed="bloom-a" at={[102, 58]} across={34} up={22} count={62} of={tone.yellow} size={2} />
        </Block>
        <Arrow at={[112, 56]} from={[138, 40]} />
      </Lens>
    </>
  ),
  'seen/red-purple-skin': (id) => (
    <>
      <Knife of={tone.purple} />
      <Strokes d="M15 40Q15 28 25 18M15 78V46" of={tone.gloss} width={1.2} />
      <Lens id={id} spot={[21, 52]}>
        <Block seed="fire-skin" layers={[{ of: tone.purple, deep: 4, rough: 0.4 }]} rough={0.4}>
          <Strokes d="M66 60H112M72 66H98" of={tone.gloss} width={1.4} />
          <Flat d={shard('charcoal-a', [136, 56], 11, 8, 0.3, 6)} of={tone.black} />
          <Strokes d="M129 53l12 3M131 58l12 2" of={tone.soft} />
          <Flat d={shard('charcoal-b', [114, 44], 6, 4, 0.3, 6)} of={tone.black} />
        </Block>
        <Arrow at={[92, 82]} from={[80, 102]} />
      </Lens>
    </>
  ),
}

/** A blister whose shell has broken: one sees that it is hollow. */
function Broken({ at: [x, y], r }: { readonly at: readonly [number, number]; readonly r: number }) {
  const foot = `M${x - r} ${y}Q${x} ${y + r * 0.5} ${x + r} ${y}`
  return (
    <g>
      <path
        d={`${foot}L${x + r * 0.95} ${y - r * 0.5}Q${x} ${y - r * 0.9} ${x - r * 0.9} ${y - r * 0.55}Z`}
        fill={tone.black}
      />
      <path
        d={`${foot}L${x + r * 0.9} ${y - r * 0.75}L${x + r * 0.6} ${y - r * 0.3}L${x + r * 0.3} ${y - r * 0.5}L${x} ${y - r * 0.1}L${x - r * 0.3} ${y - r * 0.45}L${x - r * 0.6} ${y - r * 0.25}L${x - r * 0.9} ${y - r * 0.85}Z`}
        fill={tone.bright}
      />
    </g>
  )
}

function Cube({ x, y }: { readonly x: number; readonly y: number }) {
  return <path d={`M${x} ${y}l4 -3l5 2l-1 5l-5 2l-4 -2zl4 2l5 -2m-5 2v4`} fill={tone.gold} />
}
