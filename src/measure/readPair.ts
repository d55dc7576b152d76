import { foundText } from './foundText.ts';
import { plainText } from './plainText.ts';
import { type LengthFault, type LengthReading, readLength } from './readLength.ts';
import type { System, Ticks } from './Ticks.ts';

/** Two lengths, such as the sides of a tile; `system` is that of the first. */
export type PairReading =
  | { readonly ok: true; readonly first: Ticks; readonly second: Ticks; readonly system: System }
  | { readonly ok: false; readonly code: LengthFault | 'notAPair'; readonly found: string };

/**
 * Two lengths with `x`, `×` or `by` between them. One unit at the end serves both numbers.
 *
 * @example readPair('11 13/16 in x 23 7/8 in') //=> {ok: true, first: 96012, second: 194056, system: 'inches'}
 * @example readPair('600 x 300 mm') //=> {ok: true, first: 192000, second: 96000, system: 'mm'}
 * @example readPair('12 in') //=> {ok: false, code: 'notAPair', found: '12 in'}
 */
export function readPair(value: unknown): PairReading {
  const found = foundText(value);
  if (typeof value !== 'string') return { ok: false, code: 'notText', found };
  const parts = plainText(value).split(/ ?(?:[x×*]|\bby\b) ?/i);
  if (parts.length !== 2) return { ok: false, code: 'notAPair', found };
  const second = readLength(parts[1]);
  if (!second.ok) return { ok: false, code: second.code, found };
  const first = readFirst(parts[0]!, parts[1]!);
  if (!first.ok) return { ok: false, code: first.code, found };
  return { ok: true, first: first.ticks, second: second.ticks, system: first.system };
}

function readFirst(first: string, second: string): LengthReading {
  const reading = readLength(first);
  if (reading.ok || reading.code !== 'bareNumber') return reading;
  const unit = /^[\d./ -]+(["'a-z.]+)$/i.exec(second)?.[1];
  return unit ? readLength(`${first} ${unit}`) : reading;
}
