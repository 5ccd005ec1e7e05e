import { fold } from '../../base/fold.ts'
import { unitOf, type Unit } from './units.ts'

/** What a heading says its column holds, in the languages loggers were seen to print. */
export type HeadingSense =
  | 'temperature'
  | 'humidity'
  | 'stamp'
  | 'date'
  | 'time'
  | 'channel'
  | 'other-quantity'
  | 'counter'

/** In this order: a dew point is no temperature though it is told in degrees; a box by the door is no door. */
const senses: readonly (readonly [HeadingSense, RegExp])[] = [
  [
    'other-quantity',
    /dew|\bdp\b|taupunkt|rosee|rocio|rugiada|dauwpunt|orvalho|wet.?bulb|feuchtkugel|heat.?index|\bvpd\b|absolut|\bg\s?\/\s?(?:m|k?g)|mixing|mischung|enthalp|spezif|specific|\bbatt|\bcpu\b|\bboard\b|\bpcb\b/,
  ],
  ['other-quantity', /\b(?:min|max)(?:imum)?\.?(?:\s(?:temp|rh|hum|feu|rel|t)|$|\s?[([])|\bstd\b|deviation/],
  ['stamp', /time.?stamp|zeitstempel|horodat/],
  [
    'humidity',
    /humid|\brh\b|\brh\d|\br\.\s?h\b|\bhum\b|feucht|\brf\b|\br\.\s?f\b|\bhr\b|\bh\.\s?r\b|humedad|umidit|umidad|vocht|\brv\b|fukt|fugt|wilgot|kosteus|\bur\b|hygro|vlhkost/,
  ],
  [
    'temperature',
    /temperat|\btemp|temp\b|\bt\b|\bt\d{1,2}\b|\bdeg\.?\s?[cf]\b|°\s?[cf]\b|celsius|fahrenheit|lampotila|teplota|\btmp\b/,
  ],
  [
    'other-quantity',
    /\blux\b|light|licht|lumi|\buv\b|press|druck|hpa|mbar|co2|\bppm\b|volt|\bvdc\b|\bv\b|rssi|signal|altitude|shock|accel|door|alarm|event|note|comment|bemerk|status|state|flag|host|button|coupler|attached|stopped|end of file|quality/,
  ],
  [
    'channel',
    /channel|kanal|canal|\bch\b|sensor|fuhler|capteur|probe|logger|device|gerat|appareil|station|serial|serien|serie|\bs\/?n\b|\bid\b|location|\bname\b|\bort\b|\blieu\b|\broom\b|\braum\b|\bbox\b/,
  ],
  [
    'stamp',
    /date.?(?:and.?)?time|datum.{0,5}(?:zeit|tijd)|zeitpunkt|date.{0,4}heure|fecha.{0,4}hora|data.{0,4}or[ae]|tidspunkt|epoch|unix|\butc\b|\bts\b/,
  ],
  [
    'counter',
    /^(?:no\.?|nr\.?|n°|num(?:ber)?|index|record|rec|sample|reading|scan|row|line|lfd\.?|messung|mesure|entry|point)(?:\s|$)|^#|^n[°o]$/,
  ],
  ['date', /\bdat(?:e|um|a|o)\b|^date|fecha|\bjour\b|\btag\b|^day\b|\bdag\b|paiva/],
  ['time', /\btime\b|time$|^time|zeit\b|heure|\bhora\b|\bora\b|tijd|klokke|\btid\b|\bclock\b|godzina|kello/],
]

/** Letters of one word run together with digits or with the next (`RH1`, `TempC`, `air_temp`) are parted first. */
const parted = (heading: string) =>
  fold(heading.replace(/([a-z]{2})([A-Z])/g, '$1 $2').replace(/℃/g, '°C'))
    .replace(/[_]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

export interface HeadingRead {
  readonly sense: HeadingSense | null
  readonly unit: Unit | null
}

const unitWithin = (heading: string): Unit | null => {
  const plain = parted(heading)
  for (const [, within] of plain.matchAll(/[([{]\s*([^)\]}]{1,12})\s*[)\]}]/g)) {
    const unit = unitOf(within!)
    if (unit) return unit
  }
  if (/%|percent|\bpct\b/.test(plain)) return 'percent'
  if (/°\s?f\b|\bdeg\.?\s?f\b|fahrenheit|[\s_,/]f$/.test(plain)) return 'fahrenheit'
  if (/°\s?c\b|\bdeg\.?\s?c\b|celsius|[\s_,/]c$/.test(plain)) return 'celsius'
  if (/kelvin|[\s_,/]k$/.test(plain)) return 'kelvin'
  const bare = unitOf(plain)
  return bare === 'percent' ? null : bare
}

/** What a heading says; null sense: no word of it is known. */
export function readHeading(heading: string): HeadingRead {
  const plain = parted(heading)
  if (plain === '' || plain.length > 120) return { sense: null, unit: null }
  const unit = unitWithin(heading)
  const sense = senses.find(([, words]) => words.test(plain))?.[0] ?? null
  if (sense !== null && sense !== 'channel') return { sense, unit: sense === 'stamp' ? null : unit }
  if (unit === 'percent') return { sense: 'humidity', unit }
  if (unit !== null && sense === null) return { sense: 'temperature', unit }
  return { sense, unit }
}

const quantityWords =
  /relativ[ea]?|humidit[yeéà]|humid|humedad|umidit[aà]|umidade|t[eé]mp[eé]ratur[ae]?|temp|luftfeuchtigkeit|luftfeuchte|feuchtigkeit|feuchte|feucht|\brel\.?(?![a-z])|\br\.?\s?[hf]\.?(?![a-z])|\bh\.?\s?r\.?(?![a-z])|\bhum\b|\bair\b|\bluft|\bt(?=\d|\b)|\b(?:average|avg|mean|mittel(?:wert)?|value|wert)\b|[%°]|\bcelsius\b|\bfahrenheit\b|\bdeg\.?\s?[cf]\b|\b(?:percent|pct)\b/gi

/** What remains of a heading without the words of its quantity and unit: it names the sensor, where there are several. */
export function sensorPart(heading: string): string {
  return heading
    .replace(/([a-z]{2})([A-Z])/g, '$1 $2')
    .replace(/[([{]\s*(?:°?\s?[cfk]|%.{0,6}|.{0,4}%|rh|rf|hr|deg\.?\s?[cf])\s*[)\]}]/gi, ' ')
    .replaceAll('_', ' ')
    .replace(quantityWords, ' ')
    .replace(/[()[\]{}]/g, ' ')
    .replace(/(?:^|\s)[cfk](?=\s|$)/gi, ' ')
    .replace(/[\s,;:/.·-]+/g, ' ')
    .trim()
}
