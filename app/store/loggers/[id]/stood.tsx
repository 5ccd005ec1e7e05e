import type { LogFile, Logger } from '../../../../lib/services/loggers.ts'
import { dayWords, momentWords } from '../../../../lib/wording/day.ts'
import { channelWords, floorWords } from '../../../../lib/wording/store-log.ts'
import style from '../loggers.module.css'
import { numberWords } from '../../../../lib/wording/band.ts'

/** What the register has of it, and where it stood from when to when. */
export function Stood({ logger: { given } }: { readonly logger: Logger }) {
  const { floor_rh_percent, error_rh_percent, calibration_due, salts = [], stood } = given
  const facts = [
    ['Reads down to', floorWords(floor_rh_percent)],
    [
      'May be off by',
      error_rh_percent === undefined ? 'not written down' : `± ${numberWords(error_rh_percent)} %`,
    ],
    ['Calibration due', calibration_due === undefined ? 'not written down' : dayWords(calibration_due)],
    ...salts.map(({ salt, trueRhPercent, readRhPercent, on }) => [
      `Over ${salt}${on === undefined ? '' : `, ${dayWords(on)}`}`,
      `read ${numberWords(readRhPercent)} %, should read ${numberWords(trueRhPercent)} %`,
    ]),
  ]
  return (
    <section className="section" aria-labelledby="stood">
      <h2 id="stood">Where it stood</h2>
      {stood.length === 0 ? (
        <p>Nobody has written where it stood; its readings belong to no box.</p>
      ) : (
        <ol>
          {stood.map(({ box, room, from, to }) => (
            <li key={`${from} ${box} ${room}`}>
              {`${box === undefined ? `room ${room ?? ''}` : `box ${box}`}${from === undefined ? '' : `, from ${dayWords(from)}`}${to === undefined ? ', still there' : `, to ${dayWords(to)}`}`}
            </li>
          ))}
        </ol>
      )}
      <dl className={style.facts}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

interface FilesProps {
  readonly files: readonly LogFile[]
  readonly loggerId: string
  readonly zone: string
}

/** The files its readings came from, each kept as it came. */
export function Files({ files, loggerId, zone }: FilesProps) {
  if (files.length === 0) return null
  return (
    <section className="section" aria-labelledby="files">
      <h2 id="files">Files it brought</h2>
      <ul>
        {files.map((file) => (
          <li key={file.id}>
            <strong>{file.name}</strong>
            {file.brought
              .filter((one) => one.loggerId === loggerId)
              .map((one) => `; ${channelWords({ ...one, withHumidity: one.readings }, zone)}`)}
            <span className="soft">{`; brought in by ${file.by.name}, ${momentWords(file.createdAt)}; kept as it came, ${file.sha256.slice(0, 12)}`}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
