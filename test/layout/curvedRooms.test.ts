import fc from 'fast-check';
import { describe } from 'vitest';
import { coverTheField } from '../support/coverTheField.ts';
import { curvedRoom } from '../support/curvedRoom.ts';
import { cutsClose } from '../support/cutsClose.ts';
import { looksAlike } from '../support/looksAlike.ts';

/** 8 rooms in `npm test`, 1,000 in the long run; `PART=3/10` takes the third tenth of them. */
const ROOMS = Number(process.env.LONG === '1' ? 1000 : 8);
const [part = 1, parts = 1] = (process.env.PART ?? '1/1').split('/').map(Number);
const first = Math.floor((ROOMS * (part - 1)) / parts);
const rooms = fc
  .sample(curvedRoom, { seed: 20270302, numRuns: ROOMS })
  .slice(first, Math.floor((ROOMS * part) / parts));
const named = rooms.map(
  (room, i) => [`${first + i} ${room.kind} ${room.surface.pattern.name}`, room] as const,
);

describe('random rooms with bowed and curved walls', () => {
  coverTheField(named);

  cutsClose(named);

  looksAlike(named, Math.max(2, rooms.length / 5));
});
