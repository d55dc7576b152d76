import type { ChalkLine } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { grow, overlap, segmentMeets } from './boxes.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot, TextMark } from './Mark.ts';
import { printSize, type SizePrint } from './printSize.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, flag, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, sizes, text } from './text.ts';
import { textBox } from './textBox.ts';

/** A further line runs this far past the wall, and its flag's radius, in mm of paper. */
const runPast = 4;
const flagRadius = 2.8;

/** Lines beside the first two: thin, from wall to wall, a flag at each end that has a place for it. */
export function furtherLines(surface: PacketSurface, scale: Scale, taken: Taken): readonly Mark[] {
  const marks: Mark[] = [];
  for (const line of surface.chalk.further ?? [])
    marks.push(...furtherLine(line, scale, { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] }));
  return marks;
}

function furtherLine(line: ChalkLine, scale: Scale, taken: Taken): readonly Mark[] {
  const [from, to] = [toPaper(scale, line.from), toPaper(scale, line.to)];
  const angle = angleTo(from, to);
  const ends = [
    { at: from, out: angle + Math.PI },
    { at: to, out: angle },
  ];
  const flags = ends.flatMap(({ at, out }) => {
    const made = flag(move(at, out, runPast + flagRadius), line.name, flagRadius);
    const { boxes } = takenBy(made);
    if (boxes.some((box) => taken.boxes.some((other) => overlap(box, other, 0.3)))) return [];
    return [path([at, move(at, out, runPast)], 'furtherChalk'), ...made];
  });
  return [path([from, to], 'furtherChalk'), ...flags];
}

/** Where each further line meets a wall its running distance, along the line or beside it; only where there is a place. */
export function furtherSizes(
  surface: PacketSurface,
  scale: Scale,
  print: SizePrint,
  taken: Taken,
): readonly Mark[] {
  const marks: Mark[] = [];
  for (const line of surface.chalk.further ?? [])
    for (const mark of line.marks) {
      const words = printSize(mark.distance, print);
      const far = mark.at === line.from ? line.to : line.from;
      const tries = placesAlong(toPaper(scale, mark.at), toPaper(scale, far), words);
      const now = { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] };
      const free = firstApart(tries, now);
      if (free && !liesOn(free, now)) marks.push(free);
    }
  return marks;
}

function liesOn(words: TextMark, { lines }: Taken): boolean {
  return lines.some(([a, b]) => segmentMeets(a, b, grow(textBox(words), 1.2)));
}

function placesAlong(at: Spot, far: Spot, words: string) {
  const angle = angleTo(at, far);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const [width, height] = sizeOf(words);
  const half = width / 2;
  const slanted = Math.abs(Math.sin(2 * angle)) > 0.3;
  const beside = slanted ? half * Math.abs(Math.sin(angle)) + height : height / 2 + 0.8;
  return (slanted ? [3, 6] : [3, 6, 10, 15, 21, 28]).flatMap((by) =>
    [1, -1].map((side) =>
      text(move(move(at, angle, by + half), angle + (side * Math.PI) / 2, beside), words, {
        turn,
        size: sizes.name,
        clear: 'all',
      }),
    ),
  );
}

function sizeOf(words: string): readonly [number, number] {
  const { left, right, bottom, top } = textBox(text([0, 0], words, { size: sizes.name }));
  return [right - left, top - bottom];
}
