import type { SalvageRoom } from '../../../lib/papers/salvage.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { salvageWhy } from '../../../lib/wording/salvage.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { StopsLine } from '../../_papers/stops-line.tsx'
import paper from '../../_papers/paper.module.css'

/** One room, on a paper of its own: its stops, then its boxes in the order they are carried out. */
export function SalvageTable({ room }: { readonly room: SalvageRoom }) {
  const name = room.room === '' ? 'Boxes in no listed room' : room.room
  const id = `room-${name.replaceAll(' ', '-')}`
  return (
    <section className={`section ${paper.sheet}`} aria-labelledby={id}>
      <h2 id={id}>{`${name}: ${countWords(room.boxes.length, 'box', 'boxes')}`}</h2>
      <StopsLine
        stops={room.stops.map(({ find, box, text, who }) => ({ about: `${find} in box ${box}`, text, who }))}
      />
      <Scroll name={`Boxes of ${name} in the order they are carried out`}>
        <table className="broad">
          <thead>
            <tr>
              <th scope="col" className="number">
                Order
              </th>
              <th scope="col">Box</th>
              <th scope="col">Shelf</th>
              <th scope="col">Holds</th>
              <th scope="col" className="number">
                Finds
              </th>
              <th scope="col">Out</th>
              <th scope="col">Went to</th>
            </tr>
          </thead>
          <tbody>
            {room.boxes.map((box, at) => (
              <tr key={box.box}>
                <td className="number">{at + 1}</td>
                <th scope="row">{box.box}</th>
                <td>{box.shelf}</td>
                <td>{salvageWhy(box)}</td>
                <td className="number">{box.finds.length}</td>
                <td>
                  <span className={paper.tick} aria-hidden="true" />
                </td>
                <td className={paper.write} />
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  )
}
