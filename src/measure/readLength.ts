import { foundText } from './foundText.ts';
import { plainText } from './plainText.ts';
import { NUMBER, readRatio, roundRatio } from './Ratio.ts';
import { type System, TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from './Ticks.ts';

/** What a text says as a length, or why it is not one. `found` is the text as it was given. */
export type LengthReading =
  | { readonly ok: true; readonly ticks: Ticks; readonly system: System }
  | { readonly ok: false; readonly code: LengthFault; readonly found: string };

/** `bareNumber`: no unit. `notALength`: not a length. `negative`: under 0. `notText`: not even a text. */
export type LengthFault = 'bareNumber' | 'notALength' | 'negative' | 'notText';

const INCH = String.raw`(?:"|in\b\.?|inch(?:es)?\b)`;
const FOOT = String.raw`(?:'|ft\b\.?|foot\b|feet\b)`;
const BARE = new RegExp(`^${NUMBER}$`);
const INCHES = new RegExp(`^(${NUMBER}) ?${INCH}$`, 'i');
const FEET = new RegExp(`^(${NUMBER}) ?${FOOT}$`, 'i');
const BOTH = new RegExp(`^(\\d{1,6}) ?(${FOOT})(?: ?- ?| ?)(${NUMBER})( ?${INCH})?$`, 'i');
const METRIC = new RegExp(`^(${NUMBER}) ?(mm|cm|m|(?:milli|centi)?met(?:re|er)s?)\\.?$`, 'i');

/**
 * A length as people write it. Feet and inches (`8 ft 2 1/4 in`, `8'2 1/4"`, `98.25 in`), curly and
 * prime marks, and metric (`2.495 m`, `249.5 cm`, `2495 mm`). `8'2 1/4` is read as feet and inches, for
 * YAML takes a closing inch mark away; any other number without a unit is refused. A value between two
 * ticks goes to the nearer one, once.
 *
 * @example readLength('8 ft 2 1/4 in') //=> {ok: true, ticks: 798576, system: 'inches'}
 * @example readLength("8'2 1/4") //=> {ok: true, ticks: 798576, system: 'inches'}
 * @example readLength('2.495 m') //=> {ok: true, ticks: 798400, system: 'mm'}
 * @example readLength('11 51/64 in') //=> {ok: true, ticks: 95885, system: 'inches'}
 * @example readLength(98) //=> {ok: false, code: 'bareNumber', found: '98'}
 */
export function readLength(value: unknown): LengthReading {
  const found = foundText(value);
  if (typeof value === 'number') return { ok: false, code: 'bareNumber', found };
  if (typeof value !== 'string') return { ok: false, code: 'notText', found };
  const text = plainText(value);
  const negative = text.startsWith('-');
  const reading = readPlain(negative ? text.slice(1).trim() : text);
  if (typeof reading === 'string') return { ok: false, code: reading, found };
  if (negative && reading.ticks > 0) return { ok: false, code: 'negative', found };
  return { ok: true, ...reading };
}

type Plain = { ticks: Ticks; system: System } | 'bareNumber' | 'notALength';

function readPlain(text: string): Plain {
  if (BARE.test(text)) return 'bareNumber';
  const inches = INCHES.exec(text);
  if (inches) return toTicks(inches[1]!, TICKS_PER_INCH, 'inches');
  const feet = FEET.exec(text);
  if (feet) return toTicks(feet[1]!, TICKS_PER_FOOT, 'inches');
  const metric = METRIC.exec(text);
  if (metric) return toTicks(metric[1]!, ticksPerMetric(metric[2]!.toLowerCase()), 'mm');
  return readFeetAndInches(text);
}

function readFeetAndInches(text: string): Plain {
  const both = BOTH.exec(text);
  if (!both) return 'notALength';
  const [, feet, mark, inches, unit] = both;
  // Only the foot mark makes a number after it inches: "3 ft 2" may as well have lost its unit elsewhere.
  if (unit === undefined && mark !== "'") return 'bareNumber';
  const rest = toTicks(inches!, TICKS_PER_INCH, 'inches');
  return typeof rest === 'string' ? rest : { ...rest, ticks: Number(feet) * TICKS_PER_FOOT + rest.ticks };
}

function toTicks(number: string, factor: number, system: System): Plain {
  const ratio = readRatio(number);
  return ratio ? { ticks: roundRatio(ratio, factor), system } : 'notALength';
}

function ticksPerMetric(unit: string): number {
  if (unit === 'mm' || unit.startsWith('milli')) return TICKS_PER_MM;
  return unit === 'cm' || unit.startsWith('centi') ? 10 * TICKS_PER_MM : 1000 * TICKS_PER_MM;
}
