import type { PacketSurface } from '../packet/Packet.ts';
import type { SeenPiece } from '../packet/seenPieces.ts';
import { segmentMeets, within } from './boxes.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { AreaMark } from './Mark.ts';
import { nameRequest } from './nameRequest.ts';
import { penSvg } from './penSvg.ts';
import { pieceArea } from './pieceMarks.ts';
import { placeNames } from './placeNames.ts';
import { doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { surfaceScale } from './surfaceScale.ts';
import { takenBy } from './takenBy.ts';
import { textBox } from './textBox.ts';
import { tileAreas } from './tileAreas.ts';

const border = 9;
/** Shares nearer to the smallest than this count as narrowest too. */
const same = 0.005;

/** Cut tiles hatched, the narrowest in sight outlined heavily; a border is the same in every layout. */
function pieceMarks(surface: PacketSurface, pieces: readonly SeenPiece[], scale: Scale): readonly AreaMark[] {
  const inSight = pieces.filter(({ whole, seen, border: of }) => !whole && seen !== 'hidden' && !of);
  const least = Math.min(...inSight.map(({ share }) => share));
  const narrow = new Set(inSight.filter(({ share }) => share <= least + same));
  return pieces.map((piece) =>
    pieceArea(piece, surface, scale, {
      ...(piece.whole ? {} : { fill: 'cut' }),
      ...(narrow.has(piece) ? { line: 'thick' } : {}),
    }),
  );
}

/** A layout as an owner sees it: tiles, what stands in the room and its doorways, without the crew's names and lines. */
export function drawChoice(
  surface: PacketSurface,
  pieces: readonly SeenPiece[],
  options: DrawOptions & { readonly space: Space },
): Drawing {
  const on = surfaceScale(surface, options.space, border, options.system);
  const { scale, widthMm, heightMm } = on;
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const drawn = [
    ...pieceMarks(surface, pieces, scale),
    ...tileAreas(pieces, surface, scale),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
  ];
  const there = takenBy(drawn);
  const doors = doorWords(surface, scale, options.say, { ...there, paper });
  // A name with no room on the paper or beside the walls is left out: the owner knows the doorways.
  const named = doors.filter((mark) => {
    const box = textBox(mark);
    return within(box, paper) && !there.lines.some(([from, to]) => segmentMeets(from, to, box));
  });
  const marks = [...drawn, ...named];
  const outline = surface.outline.map((point) => toPaper(scale, point));
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  const names = placeNames(things, {
    paper,
    outline,
    taken: takenBy(marks).boxes,
    lines: takenBy(marks, true).lines,
  }).marks;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return penSvg([...marks, ...names], frame);
}
