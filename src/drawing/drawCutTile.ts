import type { Cut } from '../cuts/Cut.ts';
import type { Point } from '../geometry/index.ts';
import type { System, Ticks } from '../measure/index.ts';
import { type OnePass, onePass } from '../tiles/onePass.ts';
import type { TileTurn } from '../tiles/TileTurn.ts';
import { type TileSides, tileRing } from './cutFrame.ts';
import { type LaidPiece, laidEdges, laidShapes, laidWaste, layPiece, passMarks } from './cutTileMarks.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import { deepestIn } from './deepestIn.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { pickRatio, ratios } from './pickScale.ts';
import { lengthOn, type Scale, scaleFor, toPaper } from './Scale.ts';
import { flag, leader } from './signs.ts';
import { sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** A cut in a tile, as the plan of tiles lays it, and what its piece is called. */
export interface PlannedPiece {
  readonly cut: Cut;
  readonly at: Point;
  readonly turn: TileTurn;
  readonly name: string;
}

/** A tile that is sawn, and how. */
export interface CutTileView {
  readonly tile: TileSides;
  readonly pieces: readonly PlannedPiece[];
  readonly kerf: Ticks;
  readonly step: Ticks;
}

/** Radius of a number's circle, by its digits; how far outside the tile it stands, and apart from the next, in mm. */
const radiusOf = (number: string): number => (number.length > 2 ? 4.4 : 3.5);
const out = 5.5;
const apart = 9;

/** Two pieces and the blade make up the tile to 1/32 in: less than a fence is set to. */
const ONE_PASS = 254;

/**
 * The one scale of a tile sheet, such that every tile fits the space.
 *
 * @example tileScale([{ length: 96012, width: 48006 }], { widthMm: 40, heightMm: 40 }, 'inches') //=> 8
 */
export function tileScale(tiles: readonly TileSides[], space: Space, system: System): number {
  const size = {
    width: Math.max(...tiles.map(({ length }) => length)),
    height: Math.max(...tiles.map(({ width }) => width)),
  };
  return pickRatio(size, space, system) ?? ratios[system].at(-1)!;
}

/** Pieces that one pass frees, as places in the list of pieces. */
export function passesOf({ pieces, kerf, step }: CutTileView): readonly OnePass[] {
  return onePass(
    pieces.map(({ cut, at, turn }) => layPiece(cut, at, turn)),
    kerf,
    Math.min(step, ONE_PASS),
  );
}

/** The number in a circle in the piece, its name under it where there is room. */
function inside(piece: PlannedPiece, at: Spot, room: number, radius: number): readonly Mark[] {
  const half = textWidth(piece.name, sizes.smallest) / 2;
  const named = piece.name !== '' && Math.hypot(half, radius + 2.2) < room - 0.5;
  const centre: Spot = named ? [at[0], at[1] + 1.8] : at;
  const name = text([at[0], centre[1] - radius - 2], piece.name, { size: sizes.smallest });
  return [...flag(centre, String(piece.cut.number), radius), ...(named ? [name] : [])];
}

/** A place left or right of the tile for the number of a piece too small for it, under those that stand there already. */
function besideTile(at: Spot, width: number, taken: Spot[]): Spot {
  const x = at[0] < width / 2 ? -out : width + out;
  const lowest = Math.min(...taken.filter((one) => one[0] === x).map(([, y]) => y - apart));
  const place: Spot = [x, Math.min(at[1], lowest)];
  taken.push(place);
  return place;
}

function numberMarks(view: CutTileView, laid: readonly LaidPiece[], scale: Scale): readonly Mark[] {
  const width = lengthOn(scale, view.tile.length);
  const deep = laid.map(({ shape }, i) => ({ piece: view.pieces[i]!, ...deepestIn(shape) }));
  const taken: Spot[] = [];
  return [...deep]
    .sort((a, b) => b.at[1] - a.at[1])
    .flatMap(({ piece, at, room }) => {
      const spot = toPaper(scale, at);
      const radius = radiusOf(String(piece.cut.number));
      if (lengthOn(scale, room) >= radius + 0.4) return inside(piece, spot, lengthOn(scale, room), radius);
      const place = besideTile(spot, width, taken);
      const edge: Spot = [place[0] + (place[0] < 0 ? radius : -radius), place[1]];
      return [...leader(spot, edge), ...flag(place, String(piece.cut.number), radius)];
    });
}

/**
 * A tile with the pieces that are sawn out of it, face up: factory edges heavy, the blade's width along sawn edges, waste
 * crossed out, each piece with the number of its cut; triangles at a pass that frees two pieces at once.
 */
export function drawCutTile(view: CutTileView, options: DrawOptions & { readonly ratio: number }): Drawing {
  const scale = scaleFor(tileRing(view.tile), 0, options.ratio, [0, 0]);
  const laid = view.pieces.map(({ cut, at, turn }) => layPiece(cut, at, turn));
  const { marks, ...size } = trimmed([
    ...laidShapes(laid, view.tile, scale),
    ...laidWaste(laid, view.tile, scale),
    ...laid.flatMap((piece) => laidEdges(piece, scale, view.kerf)),
    ...passesOf(view).flatMap((pass) => passMarks(pass, scale)),
    ...numberMarks(view, laid, scale),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: options.ratio, ...size });
}
