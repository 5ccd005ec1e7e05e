/**
 * A new UUIDv7 (RFC 9562, 5.7): 48 bits of time, 74 of chance, so that ids made apart, even offline, never meet and
 * still sort by the moment they were made.
 */
export function uuidV7(
  epochMilliseconds: number,
  chance: Uint8Array = crypto.getRandomValues(new Uint8Array(10)),
): string {
  const time = Math.floor(epochMilliseconds).toString(16).padStart(12, '0')
  const bytes = [...chance]
  bytes[0] = (bytes[0]! & 0x0f) | 0x70
  bytes[2] = (bytes[2]! & 0x3f) | 0x80
  const hex = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return `${time.slice(0, 8)}-${time.slice(8)}-${hex.slice(0, 4)}-${hex.slice(4, 8)}-${hex.slice(8, 20)}`
}
