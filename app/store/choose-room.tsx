interface Props {
  readonly rooms: readonly string[]
  readonly chosen: string | undefined
  readonly order: 'shelf' | 'urgent'
}

/** Which boxes are shown, and in which order. */
export function ChooseRoom({ rooms, chosen, order }: Props) {
  return (
    <form className="row no-print" role="search" aria-label="Boxes">
      <div className="field">
        <label htmlFor="room">Room</label>
        <select id="room" name="room" defaultValue={chosen ?? ''}>
          <option value="">all rooms</option>
          {rooms.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="order">Order</label>
        <select id="order" name="order" defaultValue={order}>
          <option value="shelf">as they stand</option>
          <option value="urgent">most pressing first</option>
        </select>
      </div>
      <button className="button">Show</button>
    </form>
  )
}
