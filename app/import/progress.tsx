import { countWords } from '../../lib/wording/list.ts'

interface Props {
  readonly done: number
  readonly total: number
  /** When it began [ms]. */
  readonly since: number
}

export function Progress({ done, total, since }: Props) {
  const seconds = done === 0 ? null : Math.ceil((((Date.now() - since) / done) * (total - done)) / 1000)
  return (
    <div className="stack">
      <h2>Keeping the records</h2>
      <progress
        max={total === 0 ? 1 : total}
        value={done}
        aria-label="Records kept"
        style={{ width: '100%', height: '1.5rem' }}
      />
      <p role="status">
        {total === 0 ? 'Beginning …' : `${done.toLocaleString('en-GB')} of ${countWords(total, 'record')}`}
        {seconds !== null && seconds > 1 && `, about ${countWords(seconds, 'second')} left`}
      </p>
      <p className="soft">All of it is kept, or nothing: if it breaks off, you can simply begin again.</p>
    </div>
  )
}
