import type { PacketSurface } from '../packet/Packet.ts';
import type { Box } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { clipSegment } from './template/clipSegment.ts';
import { path, sizes, text } from './text.ts';

/** Shares of a line's length at which its words may stand, the middle first. */
const PLACES = [1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4, 2 / 5, 3 / 5, 1 / 6, 5 / 6] as const;

/** Soft joints through the field: heavy lines on their tile joints. */
export function movementMarks({ movement }: PacketSurface, scale: Scale): readonly Mark[] {
  return (movement?.lines ?? []).flatMap(({ parts }) =>
    parts.map(({ from, to }) => path([toPaper(scale, from), toPaper(scale, to)], 'softJoint')),
  );
}

/** What goes into each of them, once on its longest part in a box, clear of what is drawn there. */
export function movementWords(
  { movement }: PacketSurface,
  scale: Scale,
  say: Say,
  { box, taken }: { readonly box: Box; readonly taken: Taken },
): readonly Mark[] {
  const marks: Mark[] = [];
  for (const { parts } of movement?.lines ?? []) {
    const inBox = parts.flatMap(({ from, to }) => {
      const part = clipSegment(toPaper(scale, from), toPaper(scale, to), box);
      return part ? [part] : [];
    });
    const longest = inBox.sort((a, b) => lengthOf(b) - lengthOf(a))[0];
    if (!longest) continue;
    const now = { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] };
    marks.push(firstFree(placesOn(longest, say('drawing.sealant')), now));
  }
  return marks;
}

function lengthOf([from, to]: readonly [Spot, Spot]): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function placesOn([from, to]: readonly [Spot, Spot], words: string) {
  const turn = Math.abs(Math.cos(angleTo(from, to))) < 0.3 ? 90 : 0;
  return PLACES.map((share) => {
    const at: Spot = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    return text(at, words, { turn, size: sizes.name, weight: 700, clear: 'all' });
  });
}
