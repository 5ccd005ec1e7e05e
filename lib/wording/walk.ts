import { numberWords } from './band.ts'
import { countWords } from './list.ts'

/** `below 5`, `between 10 and 15`, `above 60`: what a strip says is never one figure. */
export function intervalWords([low, high]: readonly [number, number]): string {
  if (low <= 0) return `below ${numberWords(high)}`
  if (high >= 100) return `above ${numberWords(low)}`
  return `between ${numberWords(low)} and ${numberWords(high)}`
}

/** The same in the least room, for a button: `below 5`, `10 to 15`. */
export function intervalMark([low, high]: readonly [number, number]): string {
  return low <= 0 || high >= 100 ? intervalWords([low, high]) : `${numberWords(low)} to ${numberWords(high)}`
}

/** Gel as it is seen. */
export const gelColourWords: Readonly<Record<string, string>> = {
  orange: 'orange',
  green: 'green',
  blue: 'blue',
  pink: 'pink',
  colourless: 'clear or white',
  mixed: 'some of each',
}

export const lidWords = { seated: 'seated all round', 'not-seated': 'not seated' } as const

interface Seen {
  readonly strip: readonly [number, number] | null
  readonly gelColour: string | null
  readonly lid: 'seated' | 'not-seated' | null
  readonly waterChanged: boolean
}

/** What was just written of a box, to be checked at a glance. */
export function seenOfBoxWords({ strip, gelColour, lid, waterChanged }: Seen): string {
  const said = [
    ...(strip === null ? [] : [`strip ${intervalWords(strip)} %`]),
    ...(gelColour === null ? [] : [`gel ${gelColourWords[gelColour] ?? gelColour}`]),
    ...(lid === null ? [] : [`lid ${lidWords[lid]}`]),
    ...(waterChanged ? ['water changed'] : []),
  ]
  return said.length === 0 ? 'nothing' : said.join(', ')
}

/** Where one is: `12 of 40, shelf B`. */
export function progressWords(done: number, all: number, shelf: string): string {
  return `${done} of ${all} read${shelf === '' ? '' : `, shelf ${shelf}`}`
}

/** What is on the device and not yet in the store. */
export function waitingWords(waiting: number, network: boolean): string {
  if (waiting === 0) return 'All that you wrote is in the store.'
  const kept = `${countWords(waiting, 'box', 'boxes')} kept on this device`
  return network
    ? `${kept}, to be sent in a moment.`
    : `${kept}; no network. They are sent as soon as there is one.`
}
