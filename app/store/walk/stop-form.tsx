import { gelColours, stripIntervals, type WalkSeen, type WalkStop } from '../../../lib/papers/walk-list.ts'
import { gelColourWords, intervalMark, lidWords } from '../../../lib/wording/walk.ts'
import { Choice } from './choice.tsx'
import style from './walk.module.css'

interface Props {
  readonly stop: WalkStop
  readonly seen: WalkSeen
  readonly onSeen: (seen: WalkSeen) => void
}

const lids = ['seated', 'not-seated'] as const

/** What is looked at on one box: strip, gel, lid; on a tub whether its water was changed and its lid is on. */
export function StopForm({ stop, seen, onSeen }: Props) {
  const strip = seen.strip === null ? null : stripIntervals.findIndex(([low]) => low === seen.strip?.[0])
  const lid = (
    <Choice
      legend="The lid is"
      beside={3}
      chosen={seen.lid}
      options={lids.map((value) => ({ value, label: lidWords[value] }))}
      onChoose={(chosen) => onSeen({ ...seen, lid: chosen })}
    />
  )
  if (stop.tub)
    return (
      <>
        <label className={style.tick}>
          <input
            type="checkbox"
            checked={seen.waterChanged}
            onChange={(event) => onSeen({ ...seen, waterChanged: event.target.checked })}
          />
          <span>I changed its water just now</span>
        </label>
        {lid}
      </>
    )
  return (
    <>
      <Choice
        legend="The strip reads between, in %"
        beside={3}
        chosen={strip}
        options={stripIntervals.map((interval, value) => ({ value, label: intervalMark(interval) }))}
        onChoose={(value) =>
          onSeen({ ...seen, strip: value === null ? null : (stripIntervals[value] ?? null) })
        }
      />
      <Choice
        legend="The gel looks"
        beside={3}
        chosen={seen.gelColour}
        options={gelColours.map((value) => ({
          value: value as string,
          label: gelColourWords[value] ?? value,
        }))}
        onChoose={(gelColour) => onSeen({ ...seen, gelColour })}
      />
      {lid}
    </>
  )
}
