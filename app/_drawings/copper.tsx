import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, shard } from './kit/lines.ts'
import { Flat, Glint, Grains, Mound, Powder, Shine, Stipple, Strokes, Wax } from './kit/marks.tsx'
import { Strap } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const green = [{ of: tone.green, deep: 10 }]
const spot = [23, 56] as const

/** Copper alloys: one strap-end, one cut through its patina. */
export const copper: Drawings = {
  'seen/compact-green': (id) => (
    <>
      <Strap of={tone.green}>
        <Strokes d="M12 30H34M12 34H34M12 80H34M12 84H34" />
        <Strokes d="M11 72V40" of={tone.gloss} width={1.8} />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block
          seed="compact"
          layers={[{ of: tone.green, deep: 10, rough: 0.5 }]}
          metal={tone.bronze}
          rough={0.4}
        >
          <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80" width={1.6} />
          <Strokes d="M60 62H76M60 68H72M100 56H116M100 62H112" of={tone.gloss} width={1.8} />
        </Block>
      </Lens>
    </>
  ),
  'seen/warty-green': (id) => (
    <>
      <Strap of={tone.green}>
        {strewn('warts-small', 9, [11, 30, 24, 54], 13).map(([x, y]) => (
          <circle key={x} cx={Math.round(x)} cy={Math.round(y)} r="3.4" fill={tone.greenDeep} />
        ))}
      </Strap>
      <Lens id={id} spot={spot}>
        <Block seed="warty" layers={green} metal={tone.bronze}>
          <Mound at={[82, 50]} r={11} of={tone.greenDeep} />
          <Mound at={[132, 54]} r={13} up={15} of={tone.greenDeep} />
          <Mound at={[84, 74]} r={9} of={tone.greenDeep} />
          <Flat
            d="M100 68C100 60 104 56 106 53Q114 57 122 52C125 57 130 61 130 68Q115 75 100 68Z"
            of={tone.greenDeep}
          />
          <path d="M106 53Q114 46 122 52Q114 58 106 53Z" fill={tone.greenPale} />
          <Stipple seed="pale-inside" box={[110, 50, 9, 5]} count={5} />
        </Block>
        <Arrow at={[115, 49]} from={[112, 24]} />
      </Lens>
    </>
  ),
  'seen/pale-green-powder': (id) => (
    <>
      <Strap of={tone.green}>
        <Powder seed="pale-a" at={[24, 50]} across={11} up={9} count={24} of={tone.greenPale} size={2} />
        <Powder seed="pale-b" at={[17, 78]} across={8} up={6} count={14} of={tone.greenPale} size={2} />
        <Grains points={strewn('pale-below', 6, [12, 111, 26, 5], 6)} of={tone.greenPale} size={2} />
      </Strap>
      <Lens id={id} spot={[23, 50]}>
        <Block seed="powdery" layers={green} metal={tone.bronze}>
          <ellipse cx="104" cy="62" rx="27" ry="11" fill={tone.greenDeep} />
          <Powder
            seed="pale-pit"
            at={[104, 58]}
            across={28}
            up={14}
            count={56}
            of={tone.greenPale}
            size={2.8}
          />
          <Powder
            seed="pale-fallen"
            at={[118, 86]}
            across={18}
            up={12}
            count={16}
            of={tone.greenPale}
            size={2.8}
          />
        </Block>
        <Arrow at={[122, 84]} from={[141, 76]} />
      </Lens>
    </>
  ),
  'seen/waxy-grey-green': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={shard('waxy-small', [23, 56], 12, 18)} of={tone.red} />
        <Flat d={blot('waxy-smaller', [23, 56], 8, 11)} of={tone.wax} />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block
          seed="waxy"
          layers={[
            { of: tone.red, deep: 4 },
            { of: tone.wax, deep: 14, rough: 4 },
          ]}
          metal={tone.bronze}
        >
          <Stipple seed="red-grain" box={[58, 40, 98, 36]} count={36} />
          <Wax
            of={tone.wax}
            d="M72 66C68 52 84 46 96 50C108 42 130 46 136 56C146 66 128 76 112 73C98 80 76 78 72 66Z"
            gloss="M82 60Q88 54 97 57M106 56Q116 51 126 57"
          />
          <Strokes d="M80 68Q92 73 104 68Q118 70 130 65" of={tone.soft} width={1.4} />
        </Block>
        <Arrow at={[113, 62]} from={[136, 32]} />
      </Lens>
    </>
  ),
  'seen/red-layer': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={shard('red-small', [23, 56], 12, 18)} of={tone.red} />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block seed="red" layers={[{ of: tone.red, deep: 9, rough: 2 }]} metal={tone.bronze}>
          <Strokes d="M64 50l5 3M76 44l5 3M70 62l5 3M62 72l5 3M82 70l5 3M86 54l5 3M74 74l5 3" />
          <Flat d="M160 30L114 33L108 41L112 50L101 58L106 66L96 72L97 80H160Z" of={tone.green} />
          <Flat d="M160 77L97 80L96 72L93 72L94 84L160 84Z" of={tone.greenDeep} />
        </Block>
        <Arrow at={[82, 62]} from={[76, 36]} />
      </Lens>
    </>
  ),
  'seen/black-layer': (id) => (
    <>
      <Strap of={tone.black}>
        <Flat d={shard('bronze-left', [30, 78], 8, 10)} of={tone.bronze} />
        <Strokes d="M11 72V40" of={tone.gloss} width={1.8} />
      </Strap>
      <Lens id={id} spot={[29, 70]}>
        <Block seed="sooty" metal={tone.bronze} rough={0.3}>
          <path d="M50 36H110L106 46L112 56L104 66L108 80V83H50Z" fill={tone.film} />
          <Shine
            at={[
              [64, 54],
              [86, 52],
              [68, 74],
              [88, 74],
            ]}
          />
          <path d="M164 26L112 30L108 40L113 50L106 60L109 70L104 76V92Q120 98 164 94Z" fill={tone.black} />
          <path d="M104 76Q120 80 164 74" stroke={tone.soft} strokeWidth="0.8" />
          <Grains points={soot} of={tone.soft} size={1.2} />
        </Block>
        <Arrow at={[106, 74]} from={[84, 100]} />
      </Lens>
    </>
  ),
  'seen/deep-blue-crust': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={shard('blue-small', [22, 58], 13, 20)} of={tone.blue} />
        <Strokes d="M13 54L24 60L34 52M24 60L20 74" />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block seed="azure" layers={green} metal={tone.bronze}>
          {crystals.map(([x, y, high, lean]) => (
            <g key={`${x}-${y}`}>
              <Flat d={`M${x - 5} ${y}l${lean} ${-high}l5 -6l6 5l${-lean} ${high}l-4 3z`} of={tone.blue} />
              <Strokes d={`M${x} ${y + 2}l${lean} ${2 - high}l0 -9`} of={tone.gloss} />
            </g>
          ))}
          <Glint at={[108, 46]} r={8} />
          <Glint at={[134, 62]} r={6} />
        </Block>
      </Lens>
    </>
  ),
  'seen/pale-blue-powder': (id) => (
    <>
      <Strap of={tone.green}>
        <circle cx="23" cy="80" r="9" fill={tone.glass} />
        <Strokes d="M18 78q3 -4 7 -4" of={tone.gloss} width={1.8} />
        <Powder
          seed="paleblue-small"
          at={[22, 60]}
          across={13}
          up={12}
          count={22}
          of={tone.bluePale}
          size={1.6}
        />
      </Strap>
      <Lens id={id} spot={[23, 64]}>
        <Block seed="cupboard" layers={green} metal={tone.bronze}>
          <Powder
            seed="paleblue"
            at={[104, 60]}
            across={26}
            up={15}
            count={46}
            of={tone.bluePale}
            size={2.6}
          />
          <path d={tufts} strokeWidth="3.2" strokeLinecap="round" />
          <path d={tufts} stroke={tone.bluePale} strokeWidth="1.7" strokeLinecap="round" />
          <Flat d="M44 22H74Q94 40 90 64Q86 84 44 88Z" of={tone.glass} />
          <Strokes d="M62 36q12 4 15 18M58 46q7 3 9 10" of={tone.gloss} width={2.6} />
        </Block>
        <Arrow at={[98, 54]} from={[120, 22]} />
      </Lens>
    </>
  ),
  'seen/waxy-turquoise': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d="M2 64H44V86H2Z" of={tone.leather} />
        <Strokes d="M5 68h36M5 82h36" of={tone.gloss} />
        <path d="M8 64q4 -7 9 -3q6 -6 11 0q5 -4 9 3z" fill={tone.turquoise} />
      </Strap>
      <Lens id={id} spot={[23, 60]}>
        <Block seed="soapy" layers={green} metal={tone.bronze}>
          <Wax
            of={tone.turquoise}
            d="M66 70C62 56 76 52 84 57C88 46 108 44 112 55C124 46 142 54 138 70Z"
            gloss="M74 61Q78 57 82 61M94 54Q100 49 106 54M122 58Q128 54 132 60"
          />
          <Flat d="M50 68Q100 64 160 68V114H50Z" of={tone.leather} />
          <Strokes d="M56 76h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8" of={tone.bone} width={1.8} />
          <Stipple seed="leather-pores" box={[60, 84, 92, 24]} count={30} />
        </Block>
        <Arrow at={[100, 50]} from={[112, 24]} />
      </Lens>
    </>
  ),
  'seen/brassy-film': (id) => (
    <>
      <Strap of={tone.black}>
        <Flat d={blot('film-small', [23, 56], 14, 30, 0.25)} of={tone.gold} />
        <Shine
          at={[
            [16, 50],
            [22, 66],
          ]}
        />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block
          seed="brassy"
          layers={[
            { of: tone.gold, deep: 2.5, rough: 0.3 },
            { of: tone.black, deep: 12, rough: 2 },
          ]}
          surface={tone.gold}
          metal={tone.bronze}
          rough={0.5}
        >
          <Shine
            at={[
              [66, 62],
              [78, 54],
              [136, 50],
              [84, 76],
            ]}
          />
          <Flat d={shard('film-torn', [114, 62], 22, 11)} of={tone.black} />
          <Stipple seed="black-below" box={[98, 56, 32, 13]} count={12} of={tone.soft} size={1.5} />
        </Block>
        <Arrow at={[116, 58]} from={[128, 28]} />
      </Lens>
    </>
  ),
  'seen/bare-metal': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={blot('bare-small', [23, 56], 13, 26, 0.2)} of={tone.bronze} />
        <Strokes d="M15 60l12 -14M19 66l12 -14M17 74l12 -14" />
      </Strap>
      <Lens id={id} spot={spot}>
        <Block seed="bare" metal={tone.bronze} rough={0.3}>
          <Strokes d="M58 66L92 44M64 72L104 44M80 74L112 50M96 76L122 56" />
          <Strokes d="M61 66L95 44M83 74L115 50" of={tone.gloss} width={1.4} />
          <Flat d="M160 30L132 34L128 44L134 54L126 64L130 72L124 80H160Z" of={tone.green} />
          <Flat d="M160 80H124L121 85L160 86Z" of={tone.greenDeep} />
        </Block>
      </Lens>
    </>
  ),
  'seen/raised-green-along-seam': (id) => (
    <>
      <Strap of={tone.bronze}>
        <Strokes d="M6 56H40" width={2} />
        {[9, 15, 20, 27, 32, 37].map((x, index) => (
          <circle key={x} cx={x} cy={56 - (index % 2)} r={3 + (index % 3) * 0.5} fill={tone.greenDeep} />
        ))}
      </Strap>
      <Lens id={id} spot={spot}>
        <Block seed="seam" metal={tone.bronze} rough={0.3}>
          <path d="M50 36H164V62H50Z" fill={tone.bronze} />
          <path d="M50 62H164V67H50Z" fill={tone.rustDeep} />
          <Strokes d="M62 44H82M96 50H118M134 43H150M70 74H92M122 75H146" of={tone.gloss} width={1.4} />
          <Mound at={[67, 67]} r={9} up={12} of={tone.greenDeep} />
          <Mound at={[84, 68]} r={8} up={10} of={tone.greenDeep} />
          <Mound at={[101, 67]} r={10} up={15} of={tone.greenDeep} />
          <Mound at={[120, 68]} r={9} up={12} of={tone.greenDeep} />
          <Mound at={[136, 67]} r={7} up={9} of={tone.greenDeep} />
          <Mound at={[150, 68]} r={8} up={12} of={tone.greenDeep} />
        </Block>
        <Arrow at={[102, 52]} from={[112, 26]} />
      </Lens>
    </>
  ),
}

/** Foot, height and lean of each crystal, from the back. */
const crystals = [
  [84, 54, 12, -4],
  [112, 52, 10, 2],
  [138, 56, 11, 5],
  [72, 68, 12, -6],
  [98, 68, 18, -2],
  [124, 70, 15, 4],
  [145, 74, 9, 4],
  [84, 79, 9, -3],
  [111, 80, 9, 1],
] as const

/** Tufts of fine hairs, where the powder thins out. */
const tufts = [
  [124, 52],
  [142, 58],
  [130, 70],
  [112, 77],
  [146, 74],
]
  .map(([x, y]) => `M${x} ${y}l-5-6m5 6l-1-9m1 9l4-8`)
  .join('')
const soot = strewn('soot', 40, [114, 34, 42, 56], 7)
