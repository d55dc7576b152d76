import {
  bounds,
  lineThroughShape,
  offsetShapes,
  pointInShape,
  type Ring,
  ringCentroid,
  type Shape,
  subtract,
} from '../../geometry/index.ts';
import type { ChalkLine, LaterLines, Layout, Piece } from '../Layout.ts';
import { type ChalkGround, facesOf } from './chalkGround.ts';
import { apartOf, jointLine, leastApart, type Stretch } from './chalkLine.ts';
import type { Faces } from './Faces.ts';
import { isBeside, roomBeside } from './isBeside.ts';
import { jointsOn } from './jointsOn.ts';
import { finish } from './makeChalk.ts';

/**
 * What may be snapped before each zone but the first, when the tile of the zones before it lies: which lines
 * are wholly bare, and on an axis where none is, the one whose marks lie farthest apart on bare floor.
 *
 * `zones` are the names of the pieces of each zone in the order of work.
 */
export function laterLines(
  layout: Layout,
  ground: ChalkGround,
  zones: readonly (readonly string[])[],
): LaterLines[] {
  const byId = new Map(layout.pieces.map((piece) => [piece.id, piece]));
  const parts = zones.map((ids) => ids.flatMap((id) => byId.get(id) ?? []));
  const laid = parts.map((own, i) => laidFloor(own, parts.slice(i + 1).flat(), layout.pattern.joint));
  const faces = facesOf(ground);
  const own = [...layout.chalk.lines, ...(layout.chalk.further ?? [])];
  const inlaid = (layout.inlays ?? []).flatMap(({ chalk }) => chalk?.lines ?? []);
  let next = own.length + inlaid.length + 1;
  return zones.slice(1).map((_, i) => {
    const covered = laid.slice(0, i + 1).flat();
    const bareFaces = { ...faces, floor: subtract(faces.floor, covered) };
    const bare = own.filter((line) => line.snappable && isBare(line, bareFaces));
    const lines = ([0, 1] as const).flatMap((axis) => {
      if (bare.some((line) => line.axis === (axis === 0 ? 'along' : 'across'))) return [];
      const best = bestStretch(axis, layout, ground, bareFaces);
      if (!best) return [];
      const courses = axis === 0 ? layout.chalk.lines[0]?.courses : undefined;
      const line = {
        axis: axis === 0 ? 'along' : 'across',
        ...best,
        snappable: true,
        ...(courses && { courses }),
      } as const;
      return [
        finish({ ...line, name: `${next++}` }, bareFaces, {
          ...ground,
          pattern: layout.pattern,
          wide: layout.wide ?? [],
        }),
      ];
    });
    return { zone: i + 2, bare: bare.map(({ name }) => name), lines };
  });
}

/** What a zone's pieces cover as whole tiles, with the joint: the box round them, or where that holds floor of later zones each for itself. */
function laidFloor(own: readonly Piece[], later: readonly Piece[], joint: number): Shape[] {
  const box = { outer: ringRound(own, joint), holes: [] };
  const holdsOther = later.some(({ fullTile }) => pointInShape(ringCentroid(fullTile), box));
  if (!holdsOther) return [box];
  return offsetShapes(
    own.map(({ fullTile }) => ({ outer: fullTile, holes: [] })),
    joint,
  );
}

/** The box round pieces as whole tiles, with the joint. */
function ringRound(pieces: readonly Piece[], joint: number): Ring {
  const { minX, minY, maxX, maxY } = bounds(pieces.flatMap(({ fullTile }) => fullTile));
  const [left, low, right, high] = [minX - joint, minY - joint, maxX + joint, maxY + joint];
  return [[left, low], [right, low], [right, high], [left, high]]; // biome-ignore format: a box on a line
}

/** A line along neither axis has ends that are rounded to ticks: so much of it may seem to be missing. */
const ROUNDED = 1e-4;

function isBare(line: ChalkLine, faces: Faces): boolean {
  const { from, to } = line;
  if (!line.axis)
    return faces.floor
      .flatMap((shape) => lineThroughShape(shape, from, [to[0] - from[0], to[1] - from[1]]))
      .some((span) => span.from <= ROUNDED && span.to >= 1 - ROUNDED);
  const axis = line.axis === 'across' ? 1 : 0;
  return jointLine(line.from[axis], axis, faces).stretches.some(
    ({ from, to }) => `${from} ${to}` === `${line.from} ${line.to}`,
  );
}

/** Of courses that step by a length no upright joint goes through, so none is offered. */
function bestStretch(
  axis: 0 | 1,
  { pattern, origin, wide }: Layout,
  { frame, system }: ChalkGround,
  faces: Faces,
): Stretch | undefined {
  if (axis === 0 && !pattern.straightX && pattern.b[0] !== 0) return undefined;
  const { minX, minY, maxX, maxY } = bounds(frame.outline);
  const [low, high] = axis === 0 ? [minX, maxX] : [minY, maxY];
  const least = pattern.module[axis] / 2;
  // A line nearer to the wall than half a tile guides none.
  const joints = jointsOn(axis, frame, pattern, origin, wide).filter(
    (at) => at >= low + least && at <= high - least,
  );
  const all = joints.flatMap((at) => jointLine(at, axis, faces).stretches);
  const near = roomBeside(pattern.module[axis], system);
  const good = all.filter(
    (stretch) => apartOf(stretch) >= leastApart(system) && !isBeside(stretch, faces, near),
  );
  const most = Math.max(0, ...good.map(apartOf));
  const nearly = good.filter((stretch) => apartOf(stretch) >= 0.98 * most);
  return nearly[Math.floor(nearly.length / 2)];
}
