import type { PacketSurface } from '../packet/Packet.ts';
import { crackMarks, doubleLine, hollowMarks, readingMarks } from './baseMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { flag, move } from './signs.ts';
import { type Spaces, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { text } from './text.ts';

/** Paper round the room for letters and doors, and how far a number stands from what it numbers, in mm. */
const border = 9.5;
const aside = [4.5, 7, 10] as const;
const ways = 8;

function middleOf(spots: readonly Spot[]): Spot {
  const half = Math.floor((spots.length - 1) / 2);
  const [a, b] = [spots[half]!, spots[half + 1] ?? spots[half]!];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function anchorsOf({ base }: PacketSurface, scale: Scale): readonly Spot[] {
  return [
    ...(base?.cracks ?? []).map(({ line }) => middleOf(line.map((point) => toPaper(scale, point)))),
    ...(base?.hollow ?? []).map(({ at }) => toPaper(scale, at)),
    ...(base?.joints ?? []).map(({ from, to }) => middleOf([toPaper(scale, from), toPaper(scale, to)])),
  ];
}

/** Numbers in circles beside what they number, each clear of the words and of the numbers before it. */
function numbers(anchors: readonly Spot[], taken: Taken): readonly Mark[] {
  const marks: Mark[] = [];
  anchors.forEach((at, i) => {
    const tries = aside.flatMap((off) =>
      Array.from({ length: ways }, (_, k) =>
        text(move(at, ((k + 0.5) * 2 * Math.PI) / ways, off), ` ${i + 1} `, { weight: 700 }),
      ),
    );
    const boxes = [...taken.boxes, ...takenBy(marks).boxes];
    marks.push(...flag(firstFree(tries, { ...taken, boxes }).at, `${i + 1}`));
  });
  return marks;
}

/**
 * The base of a surface in the room's frame: walls, doors and obstacles, the cracks, hollow spots and joints that were told,
 * numbered; what is carried up through the tile stands as a double line. Flatness readings stand where they were read, each as
 * its depth under the highest one; the worst spot is ringed.
 */
export function drawBase(surface: PacketSurface, options: DrawOptions & { readonly space: Spaces }): Drawing {
  const { scale, widthMm, heightMm } = surfaceScale(surface, options.space, border, options.system);
  const { base } = surface;
  const room = [
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...cornerLetters(surface, scale),
  ];
  const found: readonly Mark[] = [
    ...(base?.hollow ?? []).flatMap((spot) => hollowMarks(spot, scale)),
    ...(base?.joints ?? []).flatMap(({ from, to }) => doubleLine([toPaper(scale, from), toPaper(scale, to)])),
    ...(base?.cracks ?? []).flatMap((crack) => crackMarks(crack, scale)),
  ];
  const readings = readingMarks(surface, scale, options);
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const drawn = [...room, ...readings];
  const doors = doorWords(surface, scale, options.say, { ...takenBy(drawn), paper });
  const flags = numbers(anchorsOf(surface, scale), { ...takenBy([...drawn, ...found, ...doors]), paper });
  const marks = [...found, ...drawn, ...doors, ...flags];
  return penSvg(marks, { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio });
}
