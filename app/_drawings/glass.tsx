import { Block } from './kit/block.tsx'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, cracked } from './kit/lines.ts'
import { Bead, Flat, Glint, Powder, Shadow, Stipple, Strokes } from './kit/marks.tsx'
import { Brooch } from './kit/objects.tsx'
import { Rainbow } from './kit/rainbow.tsx'
import { tone } from './kit/tones.ts'

const spot = [17, 52] as const
const body = [{ of: tone.glass, deep: 22, rough: 0.4 }]

/** Glass and enamel: one disc with a field, one cut through the field. */
export const glass: Drawings = {
  'seen/iridescence': (id) => (
    <>
      <Brooch of={tone.bronze} fill={tone.glass}>
        <Strokes d="M13 66q0-12 20-12M17 70q0-11 18-12M22 72q0-8 13-10" of={tone.purple} width={2} />
        <Strokes d="M15 68q0-12 19-12M20 71q0-9 15-11" of={tone.gold} width={2} />
      </Brooch>
      <Lens id={id} spot={spot}>
        <Block seed="rainbow" layers={body} metal={tone.bronze} rough={0.3}>
          <Rainbow />
          <Glint at={[90, 56]} r={11} />
          <Glint at={[132, 68]} r={9} />
        </Block>
      </Lens>
    </>
  ),
  'seen/glass-flaking': (id) => (
    <>
      <Brooch of={tone.bronze} fill={tone.glass}>
        <path d="M14 62l8 -8l9 3l-7 8zM20 54l4 -6l8 4" fill={tone.silver} />
        <path d="M36 92l7 -3l2 5l-6 3zM26 98l6 -2l1 4z" fill={tone.glass} />
      </Brooch>
      <Lens id={id} spot={spot}>
        <Block seed="flaking" layers={body} metal={tone.bronze} rough={0.3}>
          <Shadow d="M76 70L104 76L132 66L124 54Z" />
          <Flat d="M70 68L80 54Q98 56 122 40L134 50Q112 68 90 66L84 72Z" of={tone.silver} />
          <Flat d="M122 40L134 50L133 53L121 44Z" of={tone.lead} />
          <Strokes d="M84 59Q104 58 122 45M88 62Q108 62 126 49" of={tone.purple} width={1.4} />
          <Shadow d="M112 80L134 84L148 74L140 68Z" />
          <Flat d="M108 78L114 70Q126 70 138 60L147 68Q132 80 120 79Z" of={tone.silver} />
          <Strokes d="M118 74Q130 73 140 65" of={tone.purple} width={1.4} />
          <Flat d="M60 50l9 -6l8 5l-8 6zM136 46l8 -3l6 4l-9 3zM64 76l7 -3l4 4l-7 3z" of={tone.silver} />
        </Block>
        <Arrow at={[118, 54]} from={[146, 36]} />
      </Lens>
    </>
  ),
  'seen/droplets-on-glass': (id) => (
    <>
      <Brooch of={tone.bronze} fill={tone.glass}>
        {[
          [28, 52, 2.6],
          [31, 61, 3],
          [22, 66, 3.6],
          [14, 64, 2.2],
        ].map(([x, y, r]) => (
          <circle key={x} cx={x} cy={y} r={r} fill={tone.gloss} />
        ))}
      </Brooch>
      <Lens id={id} spot={spot}>
        <Block seed="weeping" layers={body} metal={tone.bronze} rough={0.3}>
          <path d={blot('slime', [108, 66], 36, 13, 0.2)} fill={tone.gloss} stroke="none" opacity="0.4" />
          <Bead at={[82, 54]} r={8} of={tone.bluePale} />
          <Bead at={[112, 60]} r={12} of={tone.bluePale} />
          <Bead at={[138, 54]} r={6} of={tone.bluePale} />
          <Bead at={[90, 74]} r={6} of={tone.bluePale} />
          <Bead at={[134, 72]} r={7} of={tone.bluePale} />
        </Block>
      </Lens>
    </>
  ),
  'seen/chalky-fill': (id) => (
    <>
      <Brooch of={tone.bronze} fill={tone.white}>
        <Stipple seed="chalk-small" box={[14, 52, 18, 17]} count={12} />
      </Brooch>
      <Lens id={id} spot={spot}>
        <Block seed="cell" metal={tone.bronze} rough={0.3}>
          <Flat d="M72 44H142L150 76V98H64V76Z" of={tone.white} />
          <Strokes d="M64 76H150" />
          <Stipple seed="chalk" box={[72, 48, 70, 48]} count={48} size={1.5} />
          <Strokes
            d={`${cracked('chalk-a', [88, 45], [96, 96], 3)}${cracked('chalk-b', [94, 62], [136, 56], 3)}`}
          />
          <Powder seed="chalk-loose" at={[120, 68]} across={16} up={6} count={18} of={tone.white} size={2} />
        </Block>
        <Arrow at={[128, 58]} from={[142, 34]} />
      </Lens>
    </>
  ),
}
