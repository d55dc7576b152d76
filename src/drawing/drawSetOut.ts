import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketPiece, PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf, within } from './boxes.ts';
import { chalkLine } from './chalkMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import { furtherLines } from './furtherMarks.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot } from './Mark.ts';
import { movementMarks, movementWords } from './movementMarks.ts';
import { nameRequest } from './nameRequest.ts';
import { penSvg } from './penSvg.ts';
import type { Orientation } from './pickScale.ts';
import { pieceArea } from './pieceMarks.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type MovedSize, placesOfSizes, runningSizes } from './runningSizes.ts';
import { type Scale, toPaper } from './Scale.ts';
import { type Spaces, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, text } from './text.ts';
import { textBox } from './textBox.ts';
import { thingLetters } from './thingLetters.ts';
import { threeFourFive, threeFourFiveLines } from './threeFourFive.ts';
import { tileAreas } from './tileAreas.ts';

export interface SetOutOptions extends DrawOptions {
  readonly space: Spaces;
  /** Step to which running distances are printed, to the nearest; 1/64 in or 0.1 mm unless told otherwise. */
  readonly step?: Ticks;
}

/** Paper round the room for flags and letters, in mm. */
const border = 12.5;

function faceLine(edge: PacketEdge): LineName {
  if (edge.id.endsWith(':line') || edge.meets === 'doorway') return 'opening';
  return edge.touch ? 'face' : 'hiddenFace';
}

function firstPiece({ pieces, chalk }: PacketSurface): PacketPiece | undefined {
  return pieces.find(({ id }) => id === chalk.firstPiece);
}

/** The piece that is set first in each inlay; its words tell its name. */
function firstOfInlays({ pieces, inlays = [] }: PacketSurface): readonly PacketPiece[] {
  const first = new Set(inlays.map(({ chalk }) => chalk?.firstPiece));
  return pieces.filter(({ id }) => first.has(id));
}

/** The first piece's name in its middle, or beside it where it is too small for it. */
function firstName(surface: PacketSurface, scale: Scale, taken: Taken): readonly Mark[] {
  const piece = firstPiece(surface);
  if (!piece) return [];
  const box = boxOf(piece.shape.outer.map((point) => toPaper(scale, point)));
  const at = (spot: Spot) => text(spot, piece.id, { weight: 700, clear: 'all' });
  const inside = at(nameRequest(piece.id, piece.shape, scale).pole);
  const middle = at([(box.left + box.right) / 2, (box.bottom + box.top) / 2]);
  const own = textBox(middle);
  if (within(own, box) && surface.turn % 90 === 0 && piece.whole) return [middle];
  if (within(textBox(inside), box)) return [inside];
  const [wide, high] = [own.right - own.left, own.top - own.bottom];
  const beside = [1.2, 3, 6, 10].flatMap((off): Spot[] => {
    const [up, down] = [box.top + off + high / 2, box.bottom - off - high / 2];
    const [right, left] = [box.right + off + wide / 2, box.left - off - wide / 2];
    const y = (box.bottom + box.top) / 2;
    return [[right, up], [left, up], [right, y], [left, y], [right, down], [left, down]]; // biome-ignore format: places on a line
  });
  return [firstFree(beside.map(at), taken)];
}

/** The line of the border's inner edge along each wall, and those of inlays. */
function borderMarks({ border, inlays = [] }: PacketSurface, scale: Scale): readonly Mark[] {
  const round = inlays.flatMap(({ ring }) =>
    ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! })),
  );
  return [...(border?.lines ?? []), ...round].map(({ from, to }) =>
    path([toPaper(scale, from), toPaper(scale, to)], 'furtherChalk'),
  );
}

/** The line that the pattern follows, where it follows one from place to place. */
function sightMarks({ chalk: { sight } }: PacketSurface, scale: Scale): readonly Mark[] {
  return sight ? [path([toPaper(scale, sight.from), toPaper(scale, sight.to)], 'sight')] : [];
}

/** Everything but names of obstacles, each layer keeping clear of those before; and the sizes that found no place. */
function layers(surface: PacketSurface, scale: Scale, paper: Box, options: SetOutOptions) {
  const { say } = options;
  const first = firstPiece(surface);
  const chalk = surface.chalk.lines.flatMap((line) => chalkLine(line, scale));
  const room: readonly Mark[] = [
    ...wallMarks(surface, scale, faceLine),
    ...obstacleMarks(surface, scale),
    ...movementMarks(surface, scale),
    ...borderMarks(surface, scale),
    ...sightMarks(surface, scale),
    ...chalk,
    ...cornerLetters(surface, scale, chalk),
    ...thingLetters(surface, scale, chalk),
    ...(first ? [pieceArea(first, surface, scale, { line: 'hardPiece' })] : []),
    ...(first ? tileAreas([first], surface, scale) : []),
    ...firstOfInlays(surface).map((piece) => pieceArea(piece, surface, scale, { line: 'hardPiece' })),
  ];
  const circles = surface.obstacles.map(({ ring }) => boxOf(ring.map((point) => toPaper(scale, point))));
  const taken = (marks: readonly Mark[]): Taken => {
    const { boxes, lines } = takenBy(marks, true);
    return { boxes: [...boxes, ...circles], lines, paper };
  };
  const doors = [...room, ...doorWords(surface, scale, say, { ...takenBy(room), paper })];
  const bare = [...doors, ...furtherLines(surface, scale, { ...takenBy(doors), paper })];
  const unsized = taken(bare);
  const free = { ...unsized, boxes: [...unsized.boxes, ...placesOfSizes(surface, scale, options)] };
  const lined = [...bare, ...threeFourFiveLines(surface, scale), ...firstName(surface, scale, free)];
  const sizes = runningSizes(surface, scale, options, (more) => taken([...lined, ...more]));
  const sized = [...lined, ...sizes.marks];
  const aside = (marks: readonly Mark[]): Taken => {
    const now = taken(marks);
    return { ...now, boxes: [...now.boxes, ...sizes.beside] };
  };
  const checked = [...sized, ...threeFourFive(surface, scale, options, aside(sized))];
  const soft = movementWords(surface, scale, say, { box: paper, taken: taken(checked), must: false });
  return { marks: [...checked, ...soft], moved: sizes.moved };
}

/**
 * The set-out of a surface in the room's frame: only the room, heavy where a tape can touch its face, the chalk lines
 * with their flags in snapping order, running distances from one zero, the 3-4-5 check and the first piece. A size that
 * finds no place is a letter: `moved` tells whose.
 */
export function drawSetOut(
  surface: PacketSurface,
  options: SetOutOptions,
): Drawing & { readonly orientation: Orientation; readonly moved: readonly MovedSize[] } {
  const { scale, orientation, widthMm, heightMm } = surfaceScale(
    surface,
    options.space,
    border,
    options.system,
  );
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const { marks, moved } = layers(surface, scale, paper, options);
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  const ground = {
    paper,
    outline: surface.outline.map((point) => toPaper(scale, point)),
    taken: takenBy(marks).boxes,
    lines: takenBy(marks, true).lines,
  };
  const names = placeNames(things, ground).marks;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...names], frame), orientation, moved };
}
