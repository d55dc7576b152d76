import type { Ticks } from '../../measure/index.ts';
import { bad, good, type Reader, type Reading } from '../shape/Reader.ts';
import { size } from './length.ts';
import { pair } from './pair.ts';

/** One side of a doorway as written, its edge not yet known. */
export type SideWish =
  | { readonly kind: 'plain' }
  | { readonly kind: 'undercut'; readonly tuck: Ticks }
  | { readonly kind: 'post'; readonly width: Ticks; readonly depth: Ticks };

function undercut(text: string): Reading<SideWish> {
  const reading = size.read(text);
  return reading.ok ? good({ kind: 'undercut', tuck: reading.value }) : reading;
}

function post(text: string): Reading<SideWish> {
  const reading = pair.read(text);
  if (!reading.ok) return reading;
  const [width, depth] = reading.value;
  return good({ kind: 'post', width, depth });
}

/**
 * One side of a doorway: `plain`, `undercut <how far the tile slides in>` or `post <width along the wall> x <depth>`.
 *
 * @example
 * doorSide.read('undercut 1/2 in') //=> { ok: true, value: { kind: 'undercut', tuck: 4064 } }
 * doorSide.read('post 40 mm x 90 mm') //=> { ok: true, value: { kind: 'post', width: 12800, depth: 28800 } }
 * doorSide.read('trim').code //=> 'notADoorSide'
 */
export const doorSide: Reader<SideWish> = {
  read: (value) => {
    const [, word, rest] = /^([a-z]+) *(.*)$/i.exec(String(value).trim()) ?? [];
    if (word?.toLowerCase() === 'plain' && rest === '') return good({ kind: 'plain' });
    if (word?.toLowerCase() === 'undercut' && rest) return undercut(rest);
    if (word?.toLowerCase() === 'post' && rest) return post(rest);
    return bad('notADoorSide');
  },
  standIn: { kind: 'plain' },
  json: { type: 'string', examples: ['plain', 'undercut 1/2 in', 'post 1 1/2 in x 3 1/2 in'] },
};
