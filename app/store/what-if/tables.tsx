import Link from 'next/link'
import type { Bought } from '../../../lib/boxes/what-if.ts'
import type { WhatIfShown } from '../../../lib/services/show-what-if.ts'
import { numberWords } from '../../../lib/wording/band.ts'
import { spreadMark } from '../../../lib/wording/what-if-figures.ts'
import { Scroll } from '../../_frame/scroll.tsx'

/** The picture as a table. */
export function UpkeepTable({ bought }: { readonly bought: Bought }) {
  const rows = [
    { name: 'Renewals a year', key: 'renewalsPerYear', of: 'renewals' },
    { name: 'Dry gel a year', key: 'kgPerYear', of: 'gel' },
  ] as const
  return (
    <Scroll name="Now and then, table">
      <table>
        <thead>
          <tr>
            <th scope="col">In a year</th>
            <th scope="col">Now</th>
            <th scope="col">Then</th>
            <th scope="col">Saved</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, key, of }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td>{spreadMark(bought.before[key], of)}</td>
              <td>{spreadMark(bought.after[key], of)}</td>
              <td>{spreadMark(bought.saved[key], of)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}

/** Room by room, what saves most first. */
export function RoomsTable({ rooms }: { readonly rooms: WhatIfShown['byRoom'] }) {
  return (
    <Scroll name="Room by room">
      <table className="broad">
        <caption>Room by room</caption>
        <thead>
          <tr>
            <th scope="col">Room</th>
            <th scope="col" className="number">
              Boxes
            </th>
            <th scope="col">Its air over the year</th>
            <th scope="col">Renewals a year now</th>
            <th scope="col">Then</th>
            <th scope="col">Dry gel saved a year</th>
          </tr>
        </thead>
        <tbody>
          {rooms.map(({ room, boxes, meanRhPercent: { now, then }, bought }) => (
            <tr key={room}>
              <th scope="row">
                {room === '' ? (
                  'In no named room'
                ) : (
                  <Link href={`/store/what-if?room=${encodeURIComponent(room)}`}>{room}</Link>
                )}
              </th>
              <td className="number">{boxes}</td>
              <td>
                {now === then
                  ? `${numberWords(now)} %`
                  : `${numberWords(now)} %, then ${numberWords(then)} %`}
              </td>
              <td>{spreadMark(bought.before.renewalsPerYear, 'renewals')}</td>
              <td>{spreadMark(bought.after.renewalsPerYear, 'renewals')}</td>
              <td>{spreadMark(bought.saved.kgPerYear, 'gel')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}

interface BoxesProps {
  readonly caption: string
  readonly boxes: WhatIfShown['each']
  /** Something is tried; else only what is. */
  readonly tried: boolean
  /** They stand in several rooms. */
  readonly rooms: boolean
}

/** Box by box, what saves most first. */
export function BoxesTable({ caption, boxes, tried, rooms }: BoxesProps) {
  return (
    <Scroll name={caption}>
      <table className={tried || rooms ? 'broad' : undefined}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Box</th>
            {rooms && <th scope="col">Room</th>}
            <th scope="col">{tried ? 'Renewals a year now' : 'Renewals a year'}</th>
            {tried ? (
              <>
                <th scope="col">Then</th>
                <th scope="col">Fewer</th>
                <th scope="col">Dry gel saved a year</th>
              </>
            ) : (
              <th scope="col">Dry gel a year</th>
            )}
          </tr>
        </thead>
        <tbody>
          {boxes.map(({ box, boxId, room, bought: { before, after, saved } }) => (
            <tr key={boxId}>
              <th scope="row">
                <Link href={`/store/boxes/${boxId}`}>{box}</Link>
              </th>
              {rooms && <td>{room}</td>}
              <td>{spreadMark(before.renewalsPerYear, 'renewals')}</td>
              {tried ? (
                <>
                  <td>{spreadMark(after.renewalsPerYear, 'renewals')}</td>
                  <td>{spreadMark(saved.renewalsPerYear, 'renewals')}</td>
                  <td>{spreadMark(saved.kgPerYear, 'gel')}</td>
                </>
              ) : (
                <td>{spreadMark(before.kgPerYear, 'gel')}</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
