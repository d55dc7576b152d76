import type { StartWish } from '../Job.ts';
import { bad, good, type Reader, type Reading } from '../shape/Reader.ts';
import { size } from './length.ts';

function centred(what: string | undefined, first: string, second: string): StartWish {
  const between = [first.trim(), second.trim()] as const;
  return what === 'joint' || what === 'tile'
    ? { kind: 'centred', between, what }
    : { kind: 'centred', between };
}

function cut(text: string, at: string): Reading<StartWish> {
  const reading = size.read(text);
  return reading.ok ? good({ kind: 'cut', size: reading.value, at }) : reading;
}

function read(value: unknown): Reading<StartWish> {
  const text = String(value).trim().replace(/\s+/g, ' ');
  if (/^best$/i.test(text)) return good({ kind: 'best' });
  const middle = /^(?:(joint|tile) )?cent(?:red|ered) between (.+?) and (.+)$/i.exec(text);
  if (middle) return good(centred(middle[1]?.toLowerCase(), middle[2]!, middle[3]!));
  const on = /^(joint|tile) on (.+)$/i.exec(text);
  if (on) return good({ kind: on[1]!.toLowerCase() as 'joint' | 'tile', on: on[2]! });
  const piece = /^cut of (.+) at (.+)$/i.exec(text);
  return piece ? cut(piece[1]!, piece[2]!) : bad('notAStart');
}

/**
 * Where the pattern starts on one axis.
 *
 * @example
 * startWish.read('joint on hall') //=> { ok: true, value: { kind: 'joint', on: 'hall' } }
 * startWish.read('tile centred between A-B and C-D').value //=> { kind: 'centred', between: ['A-B', 'C-D'], what: 'tile' }
 * startWish.read('cut of 5 1/2 in at A-B') //=> { ok: true, value: { kind: 'cut', size: 44704, at: 'A-B' } }
 * startWish.read('from the left').code //=> 'notAStart'
 */
export const startWish: Reader<StartWish> = {
  read,
  standIn: { kind: 'best' },
  json: {
    type: 'string',
    examples: [
      'best',
      'centred between A-B and C-D',
      'joint on hall',
      'tile on A-B',
      'cut of 5 1/2 in at A-B',
    ],
  },
};
