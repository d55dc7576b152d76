import type { ChalkLine } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { overlap } from './boxes.ts';
import type { Mark } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, flag, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path } from './text.ts';

/** A further line runs this far past the wall, and its flag's radius, in mm of paper. */
const runPast = 4;
const flagRadius = 2.8;

/** Lines beside the first two, those of inlays, and those that are snapped before a later zone: thin, from wall to wall, a flag at each end that has a place for it. */
export function furtherLines(surface: PacketSurface, scale: Scale, taken: Taken): readonly Mark[] {
  const marks: Mark[] = [];
  const { further = [], later = [] } = surface.chalk;
  const inlaid = (surface.inlays ?? []).flatMap(({ chalk }) => chalk?.lines ?? []);
  for (const line of [...further, ...inlaid, ...later.flatMap(({ lines }) => lines)])
    marks.push(...furtherLine(line, scale, { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] }));
  return marks;
}

function furtherLine(
  line: Pick<ChalkLine, 'name' | 'from' | 'to'>,
  scale: Scale,
  taken: Taken,
): readonly Mark[] {
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
