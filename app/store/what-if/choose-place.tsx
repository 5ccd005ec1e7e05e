import type { WhatIfShown } from '../../../lib/services/show-what-if.ts'

/** For which boxes it is asked: all, those of a room, or one. */
export function ChoosePlace({ shown: { asked, rooms, boxes } }: { readonly shown: WhatIfShown }) {
  return (
    <form className="row no-print" aria-label="For which boxes">
      <div className="field">
        <label htmlFor="room">For the boxes of</label>
        <select id="room" name="room" defaultValue={asked.box === undefined ? (asked.room ?? '') : ''}>
          <option value="">the whole store</option>
          {rooms.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="box">or for one box</label>
        <input
          id="box"
          name="box"
          list="boxes"
          autoComplete="off"
          maxLength={80}
          defaultValue={asked.box ?? ''}
        />
        <datalist id="boxes">
          {boxes.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      <button className="button">Show</button>
    </form>
  )
}
