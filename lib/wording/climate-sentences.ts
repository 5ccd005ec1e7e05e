/** The questions as they stand with their numbers filled in, for a table that is read without its form. */
const plain = (value: number | null) =>
  value === null ? '…' : value.toLocaleString('en-GB', { maximumFractionDigits: 4 })

type Numbers = Readonly<Record<string, number | null>>
type Choices = Readonly<Record<string, string>>

export function askedSentences(
  numbers: Numbers,
  choices: Choices,
): Readonly<Record<'room' | 'change' | 'surface' | 'warm' | 'salts', string>> {
  const n = (name: string) => plain(numbers[name] ?? null)
  const room = `${n('roomC')} °C and ${n('roomRh')} % relative humidity`
  const words = (choice: string) => (choices[choice] ?? '').replaceAll('-', ' ')
  const brought =
    choices['brought'] === 'plate'
      ? `a plate of ${words('metal')}, ${n('thicknessMm')} mm thick`
      : `a closed pack of ${n('lengthCm')} by ${n('widthCm')} by ${n('heightCm')} cm with ${n('paddingMm')} mm of foam, ${n('metalKg')} kg of ${words('metal')} and ${n('packingKg')} kg of packing and gel in it`
  const second =
    choices['secondSalt'] === 'none' ? '' : `, and ${n('secondRead')} % over ${words('secondSalt')}`
  return {
    room: `The room is at ${room}.`,
    change: `From ${room} it goes to ${n('toC')} °C; a box of gel stood at ${n('gelRh')} %.`,
    surface: `In a room of ${room} something is at ${n('surfaceC')} °C.`,
    warm: `Into a room of ${room} comes ${brought}, at ${n('startC')} °C.`,
    salts: `At ${n('saltC')} °C the logger read ${n('firstRead')} % over ${words('firstSalt')}${second}; now it reads ${n('nowRead')} %.`,
  }
}
