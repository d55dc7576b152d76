import type { PacketSurface } from '../packet/Packet.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, move } from './signs.ts';
import { takenBy } from './takenBy.ts';
import { sizes, text } from './text.ts';
import { thingCorners } from './thingCorners.ts';

/** From a corner to the middle of its letter, in mm of paper. */
const OFF = 4;
/** Turns from straight in, in radians: inside first, then outside, then beside. */
const TURNS = [0, Math.PI, Math.PI * 0.75, -Math.PI * 0.75, Math.PI / 2, -Math.PI / 2];

/** Letters of the corners of obstacles that the set-out speaks of: inside the obstacle where it has room for all of them, else clear of what is there. */
export function thingLetters(surface: PacketSurface, scale: Scale, there: readonly Mark[]): readonly Mark[] {
  const placed: Mark[] = [];
  for (const { letter, thing, at } of thingCorners(surface)) {
    const ring = surface.obstacles.find(({ name }) => name === thing)!.ring;
    const sides = ring.map((point) => toPaper(scale, point));
    const middle = middleOf(sides);
    const spot = toPaper(scale, at);
    const inward = angleTo(spot, middle);
    const tries = TURNS.map((turn) =>
      text(move(spot, inward + turn, OFF), letter, { size: sizes.note, weight: 700 }),
    );
    const { boxes } = takenBy([...there, ...placed]);
    const lines = sides.map((from, i) => [from, sides[(i + 1) % sides.length]!] as const);
    placed.push(firstApart(tries, { boxes, lines }) ?? tries[1]!);
  }
  return placed;
}

function middleOf(ring: readonly Spot[]): Spot {
  const sum = (axis: 0 | 1) => ring.reduce((all, spot) => all + spot[axis], 0) / ring.length;
  return [sum(0), sum(1)];
}
