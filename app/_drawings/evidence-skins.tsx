import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { blot, shard } from './kit/lines.ts'
import { Flat, Glint, Grains, Stipple, Strokes } from './kit/marks.tsx'
import { Knife, Strap } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const spot = [23, 56] as const
const grooves = 'M52 34L162 22M52 40L162 28M52 92L162 80M52 98L162 86'
const skin = blot('skin', [106, 60], 34, 27, 0.22, 12)
const crust = <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={46} />
/** One line of an inlay, for the specks and for the wire alike. */
const inlay = 'M60 92C78 92 74 56 94 56S112 84 126 74S140 36 152 30'

const Rusty = () => (
  <Knife of={tone.rust}>
    <Stipple seed="rusty" box={[12, 20, 18, 62]} count={24} />
  </Knife>
)

/** Skins and inlays, looked at from above; what is alike has the same object and the same place. */
export const skins: Drawings = {
  'evidence/white-metal-sheen': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={blot('sheen-small', [23, 56], 13, 24, 0.22)} of={tone.silver} />
        <Strokes d="M14 62l12 -16M18 68l14 -18M24 71l8 -10" />
        <Strokes d="M12 30H34M12 86H34" of={tone.silver} width={2.4} />
      </Strap>
      <Lens id={id} spot={spot} ground={tone.green}>
        {crust}
        <Strokes d={grooves} width={4.2} />
        <Strokes
          d="M70 32L140 24.4M66 38.5L112 33.5M80 89L150 81.3M64 96.7L124 90.1"
          of={tone.silver}
          width={2.4}
        />
        <Flat d={skin} of={tone.silver} />
        <Strokes d="M84 72l22 -26M92 77l30 -36M104 78l26 -32M116 78l16 -20" />
        <Glint at={[98, 52]} r={11} />
        <Glint at={[122, 68]} r={8} />
      </Lens>
    </>
  ),
  'evidence/gold-coloured-film': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d={blot('sheen-small', [23, 56], 13, 24, 0.22)} of={tone.gold} />
        <Stipple seed="gold-small" box={[15, 42, 16, 30]} count={14} />
        <Strokes d="M12 30H34M12 86H34" of={tone.gold} width={2.4} />
      </Strap>
      <Lens id={id} spot={spot} ground={tone.green}>
        {crust}
        <Strokes d={grooves} width={4.2} />
        <Strokes
          d="M70 32L140 24.4M66 38.5L112 33.5M80 89L150 81.3M64 96.7L124 90.1"
          of={tone.gold}
          width={2.4}
        />
        <Flat d={skin} of={tone.gold} />
        <Stipple seed="gold-dots" box={[82, 40, 48, 40]} count={40} size={1.7} />
        <Flat d={shard('worn', [112, 64], 12, 8)} of={tone.bronze} />
        <Strokes d="M104 66l10 -7M109 69l10 -7" of={tone.line} />
        <Glint at={[96, 50]} r={9} />
        <Arrow at={[117, 60]} from={[142, 46]} />
      </Lens>
    </>
  ),
  'evidence/bright-specks-in-rust': (id) => (
    <>
      <Rusty />
      <Grains
        points={[
          [14, 76],
          [18, 68],
          [20, 60],
          [22, 52],
          [25, 44],
          [27, 35],
          [28, 27],
        ]}
        of={tone.silver}
        size={2}
      />
      <Lens id={id} spot={[22, 52]} ground={tone.rust}>
        {crust}
        <path d={inlay} strokeWidth="7" strokeDasharray="0.1 13" strokeLinecap="round" />
        <path d={inlay} stroke={tone.silver} strokeWidth="5" strokeDasharray="0.1 13" strokeLinecap="round" />
        <Glint at={[94, 56]} r={9} />
        <Glint at={[139, 52]} r={8} />
        <Glint at={[74, 80]} r={7} />
      </Lens>
    </>
  ),
  'evidence/contrasting-wire': (id) => (
    <>
      <Rusty />
      <Strokes d="M14 80C22 72 16 58 24 50S26 34 29 24" width={4} />
      <Strokes d="M14 80C22 72 16 58 24 50S26 34 29 24" of={tone.silver} width={2.4} />
      <Lens id={id} spot={[22, 52]} ground={tone.rust}>
        {crust}
        <Strokes d={inlay} width={9} />
        <Strokes d={inlay} of={tone.silver} width={6.6} />
        <path d={inlay} strokeWidth="6.6" strokeDasharray="1 5" opacity="0.45" />
        <Glint at={[96, 56]} r={9} />
        <Flat d={blot('over-wire', [120, 79], 11, 8, 0.25)} of={tone.rust} />
      </Lens>
    </>
  ),
  'evidence/green-stain-in-rust': (id) => (
    <>
      <Rusty />
      <path d={blot('stain-small', [21, 54], 9, 18, 0.3)} fill={tone.green} stroke="none" />
      <Strokes d="M15 52h12M14 58h14M16 64h8M17 46h8" />
      <Lens id={id} spot={[22, 52]} ground={tone.rust}>
        {crust}
        <path d={blot('stain-halo', [106, 62], 39, 26, 0.25)} fill={tone.green} stroke="none" opacity="0.5" />
        <path d={blot('stain', [104, 62], 27, 17, 0.3)} fill={tone.green} stroke="none" />
        <Strokes d="M84 58h14m6 0h22M80 64h10m6 0h26M86 70h22M94 52h16" />
        <Grains points={strewn('stain-edge', 12, [68, 38, 78, 50], 14)} of={tone.green} size={3} />
        <Arrow at={[126, 56]} from={[142, 34]} />
      </Lens>
    </>
  ),
}
