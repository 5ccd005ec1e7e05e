import { Block } from './kit/block.tsx'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, cracked } from './kit/lines.ts'
import { Flat, Shadow, Stipple, Strokes, Wax } from './kit/marks.tsx'
import { Coin } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const spot = [23, 52] as const

/** A raised bar of the design, as the close-up of the coin shows it. */
const bar = 'M92 36H122L132 80H84Z'

/** Silver: one coin, one cut through its surface with a bar of the design. */
export const silver: Drawings = {
  'seen/black-tarnish': (id) => (
    <>
      <Coin of={tone.silver}>
        <circle cx="23" cy="60" r="18" stroke={tone.black} strokeWidth="4" opacity="0.75" />
        <Flat d={blot('tarnish-small', [31, 70], 7, 6)} of={tone.black} bare />
      </Coin>
      <Lens id={id} spot={spot}>
        <Block seed="tarnish" metal={tone.silver} rough={0.3}>
          <Flat d="M74 36H92L84 80H58ZM122 36H138L152 80H132Z" of={tone.black} bare />
          <Stipple seed="fade-left" box={[54, 38, 18, 40]} count={30} size={2} />
          <Stipple seed="fade-right" box={[144, 38, 14, 36]} count={20} size={2} />
          <path d="M58 80H84V82H58ZM132 80H152V82H132Z" fill={tone.black} />
          <Flat d={bar} of={tone.silver} />
          <Strokes d="M88 58L84 80M127 58L132 80" width={2.6} />
          <Strokes d="M98 46H112M96 54H106" of={tone.gloss} width={2} />
        </Block>
        <Arrow at={[80, 62]} from={[86, 22]} />
      </Lens>
    </>
  ),
  'seen/lavender-grey-waxy': (id) => (
    <>
      <circle cx="23" cy="60" r="20" fill={tone.lavender} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M16 56q7 -6 14 0q4 6 -2 10q-8 4 -13 -2z" opacity="0.5" />
      <Strokes d="M12 52q4 -7 11 -8M27 74q6 -2 9 -8" of={tone.gloss} width={2.2} />
      <Lens id={id} spot={spot}>
        <Block
          seed="soap"
          layers={[{ of: tone.lavender, deep: 12, rough: 2 }]}
          metal={tone.silver}
          rough={1.6}
        >
          <Wax
            of={tone.lavender}
            d="M60 68C56 52 72 44 84 49C96 38 122 40 128 50C146 50 154 64 142 71C126 80 72 80 60 68Z"
            gloss="M70 60Q78 52 88 55M104 50Q114 46 122 52"
          />
          <Strokes d="M72 70Q96 76 118 70T144 64" of={tone.soft} width={1.8} />
        </Block>
        <Arrow at={[112, 62]} from={[128, 22]} />
      </Lens>
    </>
  ),
  'seen/green-on-silver': (id) => (
    <>
      <Coin of={tone.silver}>
        <Flat d={blot('green-coin-a', [14, 52], 6, 7, 0.3)} of={tone.green} />
        <Flat d={blot('green-coin-b', [31, 70], 8, 6, 0.3)} of={tone.green} />
      </Coin>
      <Lens id={id} spot={[16, 54]}>
        <Block seed="green-silver" metal={tone.silver} rough={0.3}>
          <Strokes d={bar} />
          <Strokes d="M104 46H114M66 50H78M140 56H150" of={tone.gloss} width={1.6} />
          <Shadow d={blot('green-lump', [94, 64], 25, 11, 0.25)} />
          <Flat d={blot('green-lump', [91, 61], 24, 11, 0.25)} of={tone.green} />
          <Stipple seed="green-lump-grain" box={[74, 55, 34, 13]} count={16} />
          <Flat d={blot('green-lump-b', [136, 48], 9, 5, 0.3)} of={tone.green} />
        </Block>
      </Lens>
    </>
  ),
  'seen/brittle-cracks': (id) => (
    <>
      <Coin of={tone.silver}>
        <path d="M27 80L33 66L42 71L40 76L30 82Z" fill={tone.paper} stroke="none" />
        <path d="M29 79L33 66L40 70M33 66L24 58L27 50L20 41M24 58L14 62L4 60" strokeWidth="1.7" />
        <path d="M34 90L38 76L46 80Q42 87 34 90Z" fill={tone.silver} stroke={tone.ink} />
      </Coin>
      <Lens id={id} spot={[24, 58]}>
        <path d="M46 42L118 30L108 50L124 62L114 78L46 88Z" fill={tone.silver} />
        <path d="M46 88L114 78L124 62V68L114 84L46 94Z" fill={tone.lead} />
        <Strokes
          d={`${cracked('brittle-a', [108, 50], [58, 72], 4)}${cracked('brittle-b', [84, 60], [80, 36], 3)}${cracked('brittle-c', [74, 66], [90, 82], 3)}`}
          width={1.8}
        />
        <path d="M126 46L164 38V78L130 84L120 76L134 64Z" fill={tone.silver} />
        <path d="M130 84L164 78V84L131 90L120 82V76Z" fill={tone.lead} />
        <Arrow at={[122, 70]} from={[122, 102]} />
      </Lens>
    </>
  ),
}
