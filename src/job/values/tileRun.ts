import { plainText, type Ticks } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { size } from './length.ts';

/** Tiles laid in a row with the joints between them, and how long they were found to be. */
export interface TileRun {
  readonly tiles: number;
  readonly read: Ticks;
}

/**
 * A row that was laid out dry along the tile's length and read once: `10 tiles = 119 13/16 in`.
 *
 * @example
 * tileRun.read('10 tiles = 3048 mm') //=> { ok: true, value: { tiles: 10, read: 975360 } }
 * tileRun.read('119 13/16 in').code //=> 'notARun'
 * tileRun.read('1 tile = 12 in').code //=> 'notARun'
 */
export const tileRun: Reader<TileRun> = {
  read: (value) => {
    const form = /^(\d{1,3}) tiles? ?= ?(.+)$/i.exec(plainText(String(value)));
    const tiles = Number(form?.[1]);
    if (!form || tiles < 2) return bad('notARun');
    const read = size.read(form[2]);
    return read.ok ? good({ tiles, read: read.value }) : read;
  },
  standIn: { tiles: 10, read: Number.NaN },
  json: { type: 'string', examples: ['10 tiles = 119 13/16 in'] },
};
