import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { thoughtBefore } from '../field/thought.ts'
import { notAccepted, wrongDay } from './enter-diary.ts'
import { noneOfThese, type Identification, type IdentificationGiven } from './identification.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

const longest = { byWhom: 120, reference: 120, words: 2000 } as const

/**
 * Enters what a surface was found to be, with what was thought of it before. Said twice it is one identification; said
 * otherwise it is another, and the last one counts. Gives all identifications of the find, oldest first.
 */
export function identify(
  world: World,
  asked: IdentificationGiven & { readonly findId: string },
  by: Actor,
): Answer<readonly Identification[]> {
  const { findId, ...words } = asked
  const { knowledge } = world
  const entered: IdentificationGiven = {
    ...words,
    byWhom: words.byWhom.trim(),
    reference: words.reference.trim(),
    words: words.words.trim(),
  }
  const matter = knowledge.matters[entered.matter]
  const known = matter?.rivals.some(({ id }) => id === entered.interpretation)
  const long = (['byWhom', 'reference', 'words'] as const).find(
    (name) => entered[name].length > longest[name],
  )
  const wrong =
    (matter ? null : notAccepted('matter', 'unknown')) ??
    (known || entered.interpretation === noneOfThese ? null : notAccepted('interpretation', 'unknown')) ??
    (entered.method === '' || knowledge.methods[entered.method] ? null : notAccepted('method', 'unknown')) ??
    wrongDay(world, entered.on) ??
    (entered.byWhom === '' ? notAccepted('byWhom', 'empty') : null) ??
    (long === undefined ? null : notAccepted(long, 'too-long'))
  if (wrong) return Promise.resolve(wrong)
  return world.store.write('identify', by, async (writes) => {
    const find = await writes.finds.byId(findId)
    const newest = (await writes.records.ofFinds([findId])).at(-1)
    if (!find || !newest) return refused(missing('find', findId))
    const thought = thoughtBefore(newest.record, entered, knowledge, world.today())
    if (thought === null) return notAccepted('component', 'unknown')
    await writes.identifications.add({
      projectId: find.projectId,
      findId,
      recordId: newest.id,
      knowledge: knowledge.hash,
      given: entered,
      thought,
    })
    return given(await writes.identifications.ofFinds([findId]))
  })
}
