import type { Ticks } from '../../measure/index.ts';
import { bad, good, type Reader, type Reading } from '../shape/Reader.ts';
import { size } from './length.ts';
import { pair } from './pair.ts';

/** Two legs marked from a corner, and the distance between the marks. */
export interface CornerCheck {
  readonly legs: readonly [Ticks, Ticks];
  readonly diagonal: Ticks;
}

function read(value: unknown): Reading<CornerCheck> {
  const [legs, diagonal, more] = String(value).split('=');
  if (legs === undefined || diagonal === undefined || more !== undefined) return bad('notACornerCheck');
  const [marked, across] = [pair.read(legs.trim()), size.read(diagonal.trim())];
  if (!marked.ok) return marked.code === 'notAPair' ? bad('notACornerCheck') : marked;
  return across.ok ? good({ legs: marked.value, diagonal: across.value }) : across;
}

/**
 * A check of a corner: how far from it the walls were marked, and what was read between the marks.
 *
 * @example
 * cornerCheck.read('3 in x 4 in = 5 in').value //=> { legs: [24384, 32512], diagonal: 40640 }
 * cornerCheck.read('3 in x 4 in').code //=> 'notACornerCheck'
 */
export const cornerCheck: Reader<CornerCheck> = {
  read,
  standIn: { legs: [Number.NaN, Number.NaN], diagonal: Number.NaN },
  json: { type: 'string', examples: ['36 in x 48 in = 59 7/8 in', '900 mm x 1200 mm = 1503 mm'] },
};
