import type { Taper, Tapers, TaperWay } from '../layout/taper/Tapers.ts';
import { sawDown, sawUp, TICKS_PER_64TH, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { asSentence } from './asSentence.ts';
import { edgeWords } from './edgeWords.ts';
import { lineWords } from './lineWords.ts';
import type { SheetContext } from './SheetContext.ts';
import { surfaceFigures } from './surfaceFigures.ts';

/** As many walls, and as many other ways to lie, as stand on a sheet beside what else it has. */
const MOST_WALLS = 5;
const MOST_WAYS = 3;

/**
 * The walls that are out of line with the pattern, which run off least when it lies another way; undefined where it is square to a
 * wall and all are in line.
 */
export function taperTable(context: SheetContext, surface: PacketSurface) {
  const { tapers } = surface;
  if (!tapers) return undefined;
  const walls = outOfLine(tapers);
  if (walls.length === 0) return tableless(context, surface, tapers);
  const ways = tapers.ways.slice(1, 1 + MOST_WAYS);
  return {
    obeyed: followed(context, surface, tapers, 'out'),
    ways: ways.map((way) => wayHead(context, surface, way)),
    walls: walls.map(({ wall, index }) => wallRow(context, surface, wall, ways, index)),
    advice: tapers.advice.map(({ code, figures }) =>
      asSentence(context.say(code, adviceFigures(context, surface, figures))),
    ),
  };
}

/** Whether no wall stands near an axis of the pattern, as on a floor laid at 45°. */
function isSlanted({ walls, turnedDeg }: Tapers): boolean {
  return turnedDeg % 90 !== 0 && walls.every(({ edge }) => edge.includes(':'));
}

/** Why there is no table: no row of tiles runs along a wall, so none is cut narrower towards its end; or all walls are in line. */
function tableless(context: SheetContext, surface: PacketSurface, tapers: Tapers) {
  const { obeyed, turnedDeg } = tapers;
  const isWall = typeof obeyed === 'string';
  const aslant = isSlanted(tapers) && (isWall || obeyed.kind === 'shared');
  if (isWall && !aslant) return undefined;
  const edge = lineWords(surface, obeyed, context.say);
  const words = aslant
    ? context.say('taper.slanted', { edge, turned: degrees(context, turnedDeg) })
    : followed(context, surface, tapers, tapers.walls.length === 0 ? 'none' : 'inLine');
  return { obeyed: words, ways: [], walls: [], advice: [] };
}

/** What the pattern follows now, and how the walls lie to it. */
function followed(
  context: SheetContext,
  surface: PacketSurface,
  { obeyed, turnedDeg, walls }: Tapers,
  lie: 'out' | 'inLine' | 'none',
): string {
  const { say, length } = context;
  const turned = turnedDeg === 0 ? 'none' : degrees(context, turnedDeg);
  if (typeof obeyed === 'string') return say('taper.obeyed', { edge: obeyed, turned });
  if (obeyed.kind === 'sight')
    return say('taper.sight', { line: lineWords(surface, obeyed, say), turned, walls: lie });
  const near = walls.find(({ edge }) => edge === obeyed.near);
  const inSight = walls.filter(({ seen }) => seen !== 'hidden');
  return say('taper.sharing', {
    edge: edgeWords(surface, obeyed.near, say),
    by: near ? degrees(context, 0 - near.offDeg) : 'none',
    most: length(Math.max(0, ...inSight.map(({ runsOff }) => runsOff))),
    focal: inSight.some(({ seen }) => seen === 'focal') ? 'yes' : 'no',
    times: obeyed.focalWeight,
    walls: lie,
  });
}

/** One line a wall whose taper shows, for sheets that have no room for the table. */
export function taperLines(context: SheetContext, surface: PacketSurface): string[] {
  const shown = surface.tapers?.walls.filter(({ shows }) => shows) ?? [];
  return shown.map(({ edge, runsOff, narrow, wide }) =>
    asSentence(
      context.say(
        'taper.shows',
        surfaceFigures(context, surface, { edge, runsOff, narrow: narrow!, wide: wide! }),
      ),
    ),
  );
}

/** Walls, and faces at which tiles are cut, those that show most first; none where all are in line as far as a tape can tell. */
function outOfLine({ walls }: Tapers) {
  const told = walls
    .map((wall, index) => ({ wall, index }))
    .filter(({ wall: { narrow, edge } }) => narrow !== undefined || !edge.includes(':'));
  if (told.every(({ wall }) => wall.runsOff <= TICKS_PER_64TH)) return [];
  return told.sort((a, b) => b.wall.ofCutShare - a.wall.ofCutShare).slice(0, MOST_WALLS);
}

function wallRow(
  { say, length, number, packet }: SheetContext,
  surface: PacketSurface,
  { edge, seen, runsOff, perTile, narrow, wide, ofCutShare, shows }: Taper,
  ways: readonly TaperWay[],
  index: number,
) {
  const sawn = (size: Ticks) => length(sawDown(size, packet.rounding.step));
  const cut = narrow === undefined || wide === undefined ? '' : `${sawn(narrow)} – ${sawn(wide)}`;
  return {
    edge: edgeWords(surface, edge, say),
    runsOff: length(runsOff),
    perTile: length(perTile),
    cut,
    share: cut ? `${number(ofCutShare * 100, 0)} %` : '',
    shows,
    seen: say(shows ? 'taper.yes' : seen === 'hidden' ? 'taper.hidden' : 'taper.no'),
    ways: ways.map((way) => length(way.runsOff[index]!)),
  };
}

function wayHead(context: SheetContext, surface: PacketSurface, { kind, edges, byDeg }: TaperWay): string {
  const edge = edgeWords(surface, edges[0] ?? '', context.say);
  return context.say(kind === 'share' ? 'taper.way.share' : 'taper.way.obey', {
    edge,
    by: degrees(context, byDeg),
  });
}

function adviceFigures(
  context: SheetContext,
  surface: PacketSurface,
  { byNumber, cut, ...figures }: Readonly<Record<string, number | string>>,
) {
  return {
    ...surfaceFigures(context, surface, figures),
    ...(byNumber === undefined ? {} : { by: degrees(context, Number(byNumber)) }),
    ...(cut === undefined ? {} : { cut: context.length(sawUp(Number(cut), context.packet.rounding.step)) }),
  };
}

/** A turn with its sign, counter-clockwise without one. */
function degrees({ number }: SheetContext, value: number): string {
  return `${number(value, 2).replace('-', '−')}°`;
}
