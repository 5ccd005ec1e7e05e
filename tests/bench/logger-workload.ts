import fs from 'node:fs'

/**
 * Readings of a room over years, one a minute: a wave of the year, one of the day, weather that lasts days, and now and then a
 * gap of up to ten hours. Seeded: every run writes the same file.
 */
export interface Reading {
  atMs: number
  temperatureHundredths: number
  rhTenths: number
}

/** mulberry32, public domain: 32 bits of state, the same numbers on every machine. */
function chances(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

const minute = 60_000
const day = 1440 * minute
const year = 365.25 * day
const startMs = Date.UTC(2005, 0, 1)

/** Writes each reading into the same object, for there are millions. */
export function* readings(count: number, seed = 5): Generator<Reading> {
  const chance = chances(seed)
  // Twelve even draws less six are near enough to a normal one; here three serve.
  const swing = () => (chance() + chance() + chance() - 1.5) * 2
  const reading: Reading = { atMs: startMs, temperatureHundredths: 0, rhTenths: 0 }
  let [weather, warmth] = [0, 0]
  for (let n = 0; n < count; n += 1) {
    weather = 0.9997 * weather + 0.13 * swing()
    warmth = 0.999 * warmth + 0.02 * swing()
    const [ofYear, ofDay] = [(2 * Math.PI * reading.atMs) / year, (2 * Math.PI * reading.atMs) / day]
    const rh = 51 + 7 * Math.sin(ofYear + 0.6) + 2.5 * Math.sin(ofDay + 1) + weather
    const celsius = 17 + 5 * Math.sin(ofYear - 1.9) + 1.4 * Math.sin(ofDay - 2) + warmth
    reading.rhTenths = Math.round(10 * Math.min(99, Math.max(1, rh)))
    reading.temperatureHundredths = Math.round(100 * celsius)
    yield reading
    reading.atMs += minute * (chance() < 1e-5 ? 1 + Math.ceil(chance() * 600) : 1)
  }
}

/** `2005-01-01T00:00:00Z,17.42,52.3`, a line a reading. Gives the size in bytes. */
export function writeReadings(file: string, count: number): number {
  const to = fs.openSync(file, 'w')
  const buffer = Buffer.alloc(1 << 20)
  let [filled, written] = [buffer.write('time,temperature_c,rh_percent\n', 'latin1'), 0]
  const digits = (value: number, places: number) => {
    for (let place = places - 1, left = value; place >= 0; place -= 1) {
      buffer[filled + place] = 48 + (left % 10)
      left = Math.floor(left / 10)
    }
    filled += places
  }
  let [midnight, date] = [0, '']
  for (const { atMs, temperatureHundredths, rhTenths } of readings(count)) {
    if (filled > buffer.length - 64) {
      written += fs.writeSync(to, buffer, 0, filled)
      filled = 0
    }
    if (atMs - midnight >= day) {
      midnight = Math.floor(atMs / day) * day
      date = new Date(midnight).toISOString().slice(0, 11)
    }
    const minutes = (atMs - midnight) / minute
    filled += buffer.write(date, filled, 'latin1')
    digits(Math.floor(minutes / 60), 2)
    buffer[filled++] = 58
    digits(minutes % 60, 2)
    filled += buffer.write(':00Z,', filled, 'latin1')
    if (temperatureHundredths < 0) buffer[filled++] = 45
    const size = Math.abs(temperatureHundredths)
    digits(Math.floor(size / 100), size >= 1000 ? 2 : 1)
    buffer[filled++] = 46
    digits(size % 100, 2)
    buffer[filled++] = 44
    digits(Math.floor(rhTenths / 10), rhTenths >= 100 ? 2 : 1)
    buffer[filled++] = 46
    digits(rhTenths % 10, 1)
    buffer[filled++] = 10
  }
  written += fs.writeSync(to, buffer, 0, filled)
  fs.closeSync(to)
  return written
}
