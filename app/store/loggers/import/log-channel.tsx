import { useState } from 'react'
import type { ChannelRead } from '../../../../lib/services/read-log-file.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { instantDayWords } from '../../../../lib/wording/chart-time.ts'
import { countWords } from '../../../../lib/wording/list.ts'
import { channelWords } from '../../../../lib/wording/store-log.ts'

interface Props {
  readonly id: string
  readonly channel: ChannelRead
  readonly zone: string
  readonly serials: readonly string[]
  readonly boxes: readonly string[]
  /** Box somebody said this logger stood in, where the register does not place it. */
  readonly box: string
  readonly kept: boolean
  readonly onSerial: (serial: string) => void
  readonly onBox: (box: string) => void
}

/** One sensor of the file: whose it is, what it brings, and on which box its readings land. */
export function LogChannel({ id, channel, zone, serials, boxes, box, kept, onSerial, onBox }: Props) {
  const { serial, logger, lands, nowhere } = channel
  const unplaced = serial !== null && (logger === null || logger.given.stood.length === 0)
  return (
    <div className="stack">
      <p>
        <strong>{serial === null ? 'A logger nobody has named' : `Logger ${serial}`}</strong>
        {channel.channel !== '' && `, ${channel.channel}`}
        {`: ${channelWords(channel, zone)}.`}
        {serial !== null &&
          logger === null &&
          !kept &&
          ' It is not in the register yet and is entered with this file.'}
      </p>
      {channel.readings > 0 && serial === null && <Serial id={id} serials={serials} onSerial={onSerial} />}
      {lands.length > 0 && (
        <ul>
          {lands.map((land) => (
            <li key={`${land.box} ${land.fromMs}`}>
              {`${countWords(land.readings, 'reading')} belong to ${land.box === null ? `room ${land.room}` : `box ${land.box}`}${land.from === null ? '' : `, where it stood since ${dayWords(land.from)}`}`}
            </li>
          ))}
        </ul>
      )}
      {nowhere !== null && !unplaced && (
        <p>
          {`${countWords(nowhere.readings, 'reading')}, ${instantDayWords(nowhere.fromMs, zone)} to ${instantDayWords(nowhere.toMs, zone)}, belong to no box: nobody wrote where it stood then.`}
        </p>
      )}
      {unplaced && !kept && (
        <div className="field">
          <label htmlFor={`${id}-box`}>In which box did it stand?</label>
          <input
            id={`${id}-box`}
            list={`${id}-boxes`}
            value={box}
            autoComplete="off"
            onChange={(event) => onBox(event.target.value)}
          />
          <datalist id={`${id}-boxes`}>
            {boxes.map((one) => (
              <option key={one} value={one} />
            ))}
          </datalist>
          <p className="hint">
            From its first reading on. Left empty: its readings wait until the register says.
          </p>
        </div>
      )}
    </div>
  )
}

interface SerialProps {
  readonly id: string
  readonly serials: readonly string[]
  readonly onSerial: (serial: string) => void
}

function Serial({ id, serials, onSerial }: SerialProps) {
  const [typed, setTyped] = useState('')
  return (
    <div className="row">
      <div className="field">
        <label htmlFor={`${id}-serial`}>Which logger is it of?</label>
        <input
          id={`${id}-serial`}
          list={`${id}-serials`}
          value={typed}
          autoComplete="off"
          onChange={(event) => setTyped(event.target.value)}
        />
        <datalist id={`${id}-serials`}>
          {serials.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
        <p className="hint">The number on its back; the file does not say it.</p>
      </div>
      <button
        type="button"
        className="button"
        disabled={typed.trim() === ''}
        onClick={() => onSerial(typed.trim())}
      >
        Of this one
      </button>
    </div>
  )
}
