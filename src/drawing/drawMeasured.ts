import { printLength } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { AdjustedReading } from '../room/Room.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { cornerLetters, cornersOf, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, flag, move } from './signs.ts';
import { surfaceScale } from './surfaceScale.ts';
import { takenBy } from './takenBy.ts';
import { path, sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** Paper round the room for letters and readings, in mm. */
const border = 16;

/** Where more diagonals than these were read, their readings stand in the table only. */
const mostDiagonals = 6;

/** Where a question mark stands on its line: off the middle, where diagonals cross. */
const suspectShare = 0.27;

type Ends = readonly [Spot, Spot];

const between = ([a, b]: Ends, share: number): Spot => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

const places = [0.5, 0.4, 0.6, 0.32, 0.68, 0.25, 0.75, 0.18, 0.82];

/** Where the readings of a wall may stand: outside it, else inside. */
function wallTries(ends: Ends, words: string): readonly ReturnType<typeof text>[] {
  const along = angleTo(...ends);
  const out = along - Math.PI / 2;
  const turn = Math.abs(Math.cos(along)) < 0.7 ? 90 : 0;
  return [5, 9, -4.4, 13, -8.5].flatMap((off) =>
    places.map((share) => text(move(between(ends, share), out, off), words, { size: sizes.name, turn })),
  );
}

function diagonalTries(ends: Ends, words: string): readonly ReturnType<typeof text>[] {
  return [0.62, 0.38, 0.7, 0.3, 0.78, 0.22, 0.55, 0.45, 0.86, 0.14].map((share) =>
    text(between(ends, share), words, { size: sizes.name, clear: 'all' }),
  );
}

interface Placed {
  readonly reading: AdjustedReading;
  readonly ends: Ends;
  readonly words: string;
}

/** Readings between two corners, all of them or their mean where the line is short, with where those lie on the paper. */
function placed(surface: PacketSurface, scale: Scale, options: DrawOptions): readonly Placed[] {
  const at = new Map(cornersOf(surface).map(({ name, at }) => [name, toPaper(scale, at)]));
  return surface.adjustment.readings.flatMap((reading): readonly Placed[] => {
    const [from, to] = reading.id.split('-').map((name) => at.get(name));
    if ((reading.kind !== 'wall' && reading.kind !== 'diagonal') || !from || !to) return [];
    const said = (one: number) => printLength(one, options, { feet: true });
    const words = reading.read.map(said).join(' · ');
    const fits = textWidth(words, sizes.name) < Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [{ reading, ends: [from, to], words: fits ? words : said(reading.mean) }];
  });
}

/** A question mark at each reading that the others contradict: at the wall or diagonal, or at the corner. */
function suspectMarks(surface: PacketSurface, scale: Scale, all: readonly Placed[]): readonly Mark[] {
  const ids = new Set(surface.adjustment.suspects.flatMap((suspect) => suspect.ids));
  const corners = cornersOf(surface);
  return [...ids].flatMap((id) => {
    const line = all.find(({ reading }) => reading.id === id);
    const corner = corners.find(({ name }) => name === id.split(':')[0]);
    if (line) return flag(between(line.ends, suspectShare), '?');
    return corner ? flag(toPaper(scale, corner.at), '?') : [];
  });
}

/** Readings beside their lines, each where nothing stands yet; one that finds no place stands in the table only. */
function readingWords(all: readonly Placed[], before: readonly Mark[]): readonly Mark[] {
  const marks: Mark[] = [];
  for (const { reading, ends, words } of all) {
    const { boxes, lines } = takenBy([...before, ...marks]);
    const own = lines.filter(([a, b]) => reading.kind !== 'diagonal' || a !== ends[0] || b !== ends[1]);
    const tries = reading.kind === 'wall' ? wallTries(ends, words) : diagonalTries(ends, words);
    const found = firstApart(tries, { boxes, lines: own });
    if (found) marks.push(found);
  }
  return marks;
}

/** A surface as measured, true to scale: its outline with the letters of its corners and what was read at each line. */
export function drawMeasured(
  surface: PacketSurface,
  options: DrawOptions & { readonly space: Space },
): Drawing {
  const { scale } = surfaceScale(surface, options.space, border, options.system);
  const all = placed(surface, scale, options);
  const diagonals = all.filter(({ reading }) => reading.kind === 'diagonal');
  const room: readonly Mark[] = [
    ...diagonals.map(({ ends }) => path([...ends], 'fullTile')),
    ...wallMarks(surface, scale),
    ...obstacleMarks(surface, scale),
    ...cornerLetters(surface, scale),
    ...suspectMarks(surface, scale, all),
  ];
  const told = diagonals.length > mostDiagonals ? all.filter((one) => !diagonals.includes(one)) : all;
  const { marks, ...size } = trimmed([...room, ...readingWords(told, room)]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: scale.ratio, ...size });
}
