import type { LogProblemCode } from '../log-problem.ts'

const signatures: readonly (readonly [LogProblemCode, readonly number[]])[] = [
  ['pdf-file', [0x25, 0x50, 0x44, 0x46]],
  ['old-spreadsheet-file', [0xd0, 0xcf, 0x11, 0xe0]],
  ['picture-file', [0x89, 0x50, 0x4e, 0x47]],
  ['picture-file', [0xff, 0xd8, 0xff]],
  ['picture-file', [0x47, 0x49, 0x46, 0x38]],
  ['database-file', [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65, 0x20, 0x66]],
  ['archive-file', [0x1f, 0x8b]],
  ['archive-file', [0x37, 0x7a, 0xbc, 0xaf]],
  ['archive-file', [0x52, 0x61, 0x72, 0x21]],
  ['document-file', [0x7b, 0x5c, 0x72, 0x74, 0x66]],
]

const opensWith = (bytes: Uint8Array, signature: readonly number[]) =>
  signature.every((byte, at) => bytes[at] === byte)

/** Names of entries stand uncompressed in an archive, so a look at the bytes tells which kind it is. */
function archiveKind(head: Uint8Array): LogProblemCode {
  const text = new TextDecoder('latin1').decode(head)
  if (/xl\/work(?:book|sheets)|opendocument\.spreadsheet/.test(text)) return 'spreadsheet-file'
  return /word\/document|opendocument\.text/.test(text) ? 'document-file' : 'archive-file'
}

/** What the first bytes show the file to be, where it is no text; null: it may be one. */
export function fileKind(head: Uint8Array): LogProblemCode | null {
  if (opensWith(head, [0x50, 0x4b]) && (head[2] === 3 || head[2] === 5)) return archiveKind(head)
  return signatures.find(([, signature]) => opensWith(head, signature))?.[0] ?? null
}

const page =
  /^\s*(?:<\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*)?<(?:!doctype html|html|head|body|table|meta|div)\b/i
const xml = /^\s*<(?:\?xml|[a-z][\w:-]*[\s>])/i
const json = /^\s*(?:\{\s*["}]|\[\s*(?:[[{\]"]|-?\d+(?:\.\d+)?\s*[,\]]\s*(?:[-\d]|$)))/

/** What the first text shows the file to be, where it is no lines of cells. */
export function textKind(text: string): LogProblemCode | null {
  if (page.test(text)) return 'web-page'
  if (xml.test(text)) return 'xml-file'
  return json.test(text) ? 'json-file' : null
}
