import { decode, type Decoded } from './decode.ts'

/** What a file is, judged by what is in it; its name may say anything. */
export type Content =
  | { readonly kind: 'empty' }
  | { readonly kind: 'xlsx' }
  | { readonly kind: 'json' | 'text'; readonly decoded: Decoded }
  | { readonly kind: 'other'; readonly what: OtherKind }

export type OtherKind =
  | 'html'
  | 'pdf'
  | 'old-excel'
  | 'open-document'
  | 'word-document'
  | 'zip'
  | 'picture'
  | 'database'
  | 'binary'

const signatures: readonly (readonly [OtherKind, readonly number[]])[] = [
  ['pdf', [0x25, 0x50, 0x44, 0x46]],
  ['old-excel', [0xd0, 0xcf, 0x11, 0xe0]],
  ['picture', [0x89, 0x50, 0x4e, 0x47]],
  ['picture', [0xff, 0xd8, 0xff]],
  ['picture', [0x47, 0x49, 0x46, 0x38]],
  ['database', [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65, 0x20, 0x66]],
]
const zip = [0x50, 0x4b]

const opensWith = (bytes: Uint8Array, signature: readonly number[]) =>
  signature.every((byte, at) => bytes[at] === byte)

/** Names of entries stand uncompressed in a zip file, so a look at the bytes tells what kind it is. */
function zipKind(bytes: Uint8Array): Content {
  const text =
    new TextDecoder('latin1').decode(bytes.subarray(0, 4096)) +
    new TextDecoder('latin1').decode(bytes.subarray(-65_536))
  if (text.includes('xl/workbook') || text.includes('xl/worksheets')) return { kind: 'xlsx' }
  if (text.includes('opendocument')) return { kind: 'other', what: 'open-document' }
  if (text.includes('word/document')) return { kind: 'other', what: 'word-document' }
  return { kind: 'other', what: 'zip' }
}

const html =
  /^\s*(?:<\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*)?<(?:!doctype html|html|head|body|table|meta|div)\b/i
const json = /^\s*(?:\{\s*["}]|\[\s*[[{\]"])/

export function detect(bytes: Uint8Array): Content {
  if (bytes.length === 0) return { kind: 'empty' }
  if (opensWith(bytes, zip) && (bytes[2] === 3 || bytes[2] === 5)) return zipKind(bytes)
  const signed = signatures.find(([, signature]) => opensWith(bytes, signature))
  if (signed) return { kind: 'other', what: signed[0] }
  const decoded = decode(bytes)
  if (!decoded) return { kind: 'other', what: 'binary' }
  if (decoded.text.trim() === '') return { kind: 'empty' }
  if (html.test(decoded.text)) return { kind: 'other', what: 'html' }
  return { kind: json.test(decoded.text) ? 'json' : 'text', decoded }
}
