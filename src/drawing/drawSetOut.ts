import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf } from './boxes.ts';
import { chalkLine } from './chalkMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { furtherLines, furtherSizes } from './furtherMarks.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot } from './Mark.ts';
import { nameRequest } from './nameRequest.ts';
import { penSvg } from './penSvg.ts';
import type { Orientation } from './pickScale.ts';
import { pieceArea } from './pieceMarks.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type MovedSize, runningSizes } from './runningSizes.ts';
import { type Scale, toPaper } from './Scale.ts';
import { type Spaces, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { text } from './text.ts';
import { threeFourFive } from './threeFourFive.ts';

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

/** The first piece to set, drawn where it goes. */
function firstPiece(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const piece = surface.pieces.find(({ id }) => id === surface.chalk.firstPiece);
  if (!piece) return [];
  const box = boxOf(piece.fullTile.map((point) => toPaper(scale, point)));
  const middle: Spot = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const pole = piece.whole ? middle : nameRequest(piece.id, piece.shape, scale).pole;
  return [pieceArea(piece, surface, scale, { line: 'hardPiece' }), text(pole, piece.id, { weight: 700 })];
}

/** Everything but names of obstacles, each layer keeping clear of those before; and the sizes that found no place. */
function layers(surface: PacketSurface, scale: Scale, paper: Box, options: SetOutOptions) {
  const { system, say } = options;
  const room: readonly Mark[] = [
    ...wallMarks(surface, scale, faceLine),
    ...obstacleMarks(surface, scale),
    ...surface.chalk.lines.flatMap((line) => chalkLine(line, scale)),
    ...cornerLetters(surface, scale),
    ...firstPiece(surface, scale),
  ];
  const circles = surface.obstacles.map(({ ring }) => boxOf(ring.map((point) => toPaper(scale, point))));
  const taken = (marks: readonly Mark[]): Taken => {
    const { boxes, lines } = takenBy(marks, true);
    return { boxes: [...boxes, ...circles], lines, paper };
  };
  const doors = [...room, ...doorWords(surface, scale, say, { ...takenBy(room), paper })];
  const lined = [...doors, ...furtherLines(surface, scale, { ...takenBy(doors), paper })];
  const sizes = runningSizes(surface, scale, options, (more) => taken([...lined, ...more]));
  const sized = [...lined, ...sizes.marks];
  const checked = [...sized, ...threeFourFive(surface, scale, system, taken(sized))];
  const marks = [...checked, ...furtherSizes(surface, scale, options, taken(checked))];
  return { marks, moved: sizes.moved };
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
  };
  const names = placeNames(things, ground).marks;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...names], frame), orientation, moved };
}
