import type { Point } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { doubleLine } from './baseMarks.ts';
import type { Box } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstApart, firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { clipSegment } from './template/clipSegment.ts';
import { path, sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** Where words may stand on the part of a line that holds them whole, as shares of it, the middle first. */
const PLACES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0, 1] as const;
/** How far off the line they may stand where it has no place, in mm of paper: on it first. */
const OFF = [0, 2.6, -2.6, 6, -6, 9, -9] as const;

/** Soft joints through the field: heavy lines on their tile joints; and double lines where the base moves under the tile and no joint lies over it. */
export function movementMarks(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const onJoints = (surface.movement?.lines ?? []).flatMap(({ parts }) =>
    parts.map(({ from, to }) => path([toPaper(scale, from), toPaper(scale, to)], 'softJoint')),
  );
  const under = uncarried(surface).flatMap((line) => doubleLine(line.map((point) => toPaper(scale, point))));
  return [...onJoints, ...under];
}

/** Joints and moving cracks of the base over which no tile joint runs, as lines in the pattern's frame. */
function uncarried({ base, carried = [] }: PacketSurface): readonly (readonly Point[])[] {
  const { cracks = [], hollow = [], joints = [] } = base ?? {};
  const lines = [
    ...cracks.map(({ line }) => line),
    ...hollow.map(() => []),
    ...joints.map(({ from, to }) => [from, to]),
  ];
  return carried.flatMap(({ number, kind }) => (kind === 'none' ? [lines[number - 1] ?? []] : []));
}

/**
 * What goes into each of them, once on its longest part in a box, clear of what is drawn there; where nothing is clear it stands on
 * what it must, or on a drawing that is not the only one to say so, nowhere.
 */
export function movementWords(
  { movement }: PacketSurface,
  scale: Scale,
  say: Say,
  { box, taken, must = true }: { readonly box: Box; readonly taken: Taken; readonly must?: boolean },
): readonly Mark[] {
  const marks: Mark[] = [];
  for (const { parts } of movement?.lines ?? []) {
    const inBox = parts.flatMap(({ from, to }) => {
      const part = clipSegment(toPaper(scale, from), toPaper(scale, to), box);
      return part ? [part] : [];
    });
    const longest = inBox.sort((a, b) => lengthOf(b) - lengthOf(a))[0];
    if (!longest) continue;
    const boxes = [...taken.boxes, ...takenBy(marks).boxes];
    const lines = taken.lines.filter((line) => !liesAlong(line, longest));
    const places = placesOn(longest, say('drawing.sealant'));
    const there = { ...taken, boxes, lines };
    const word = must ? firstFree(places, there) : firstApart(places, there);
    if (word) marks.push(word);
  }
  return marks;
}

function lengthOf([from, to]: readonly [Spot, Spot]): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

/** Whether a line lies on the joint itself, as its own heavy line does, and a chalk line may. */
function liesAlong([a, b]: readonly [Spot, Spot], [from, to]: readonly [Spot, Spot]): boolean {
  const angle = angleTo(from, to);
  const off = ([x, y]: Spot) => Math.abs((y - from[1]) * Math.cos(angle) - (x - from[0]) * Math.sin(angle));
  return off(a) < 0.1 && off(b) < 0.1;
}

function placesOn([from, to]: readonly [Spot, Spot], words: string) {
  const angle = angleTo(from, to);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const length = lengthOf([from, to]);
  const half = Math.min(textWidth(words, sizes.name, 700) / 2 + 1, length / 2);
  return OFF.flatMap((off) =>
    PLACES.map((share) => {
      const on = move(from, angle, half + share * (length - 2 * half));
      const at = move(on, angle + Math.PI / 2, off);
      return text(at, words, { turn, size: sizes.name, weight: 700, clear: 'all' });
    }),
  );
}
