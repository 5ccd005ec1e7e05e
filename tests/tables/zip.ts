import { deflateRawSync } from 'node:zlib'

/** A zip file whose directory can be made to say anything. */
export function zip(
  entries: readonly { name: string; content: Uint8Array; declared?: number }[],
): Uint8Array {
  const parts: Buffer[] = []
  const directory: Buffer[] = []
  let at = 0
  for (const { name, content, declared = content.length } of entries) {
    const packed = deflateRawSync(content, { level: 9 })
    const local = Buffer.alloc(30)
    local.writeUInt32LE(0x04034b50, 0)
    local.writeUInt16LE(8, 8)
    local.writeUInt32LE(packed.length, 18)
    local.writeUInt32LE(declared, 22)
    local.writeUInt16LE(name.length, 26)
    const entry = Buffer.alloc(46)
    entry.writeUInt32LE(0x02014b50, 0)
    entry.writeUInt16LE(8, 10)
    entry.writeUInt32LE(packed.length, 20)
    entry.writeUInt32LE(declared, 24)
    entry.writeUInt16LE(name.length, 28)
    entry.writeUInt32LE(at, 42)
    parts.push(local, Buffer.from(name), packed)
    directory.push(entry, Buffer.from(name))
    at += 30 + name.length + packed.length
  }
  const end = Buffer.alloc(22)
  const size = directory.reduce((sum, part) => sum + part.length, 0)
  end.writeUInt32LE(0x06054b50, 0)
  end.writeUInt16LE(entries.length, 8)
  end.writeUInt16LE(entries.length, 10)
  end.writeUInt32LE(size, 12)
  end.writeUInt32LE(at, 16)
  return Buffer.concat([...parts, ...directory, end])
}
