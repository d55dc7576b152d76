import {
  type Point,
  type Ring,
  rotate,
  subtract,
  transformRing,
  transformShape,
} from '../../geometry/index.ts';
import type { InlaySpec } from '../../job/Job.ts';
import { makePattern, makePlain } from '../../pattern/index.ts';
import { makeField } from '../../room/makeField.ts';
import type { Obstacle, RoomEdge } from '../../room/Room.ts';
import type { BorderSide } from '../border/BorderSide.ts';
import { type BorderLaid, borderPieces } from '../border/borderPieces.ts';
import { jointFacts } from '../border/courseEnds.ts';
import { layCourses } from '../border/layCourses.ts';
import { type BorderGround, wallsOf } from '../border/makeBorder.ts';
import { inTicks } from '../border/offsetLine.ts';
import { softEdges, softThrough } from '../border/partGround.ts';
import { faultsOf } from '../faults/faultsOf.ts';
import { moveObstacle, type RoomInFrame } from '../frame/frameRoom.ts';
import { makeGround } from '../frame/Ground.ts';
import { turnOf } from '../frame/turnOf.ts';
import type { Piece } from '../Layout.ts';
import { softStrip } from '../movement/SoftLine.ts';
import { namePieces, pieceOf } from '../names/namePieces.ts';
import { laidPieces } from '../pieces/laidPieces.ts';
import { layTiles } from '../pieces/layTiles.ts';
import { chooseStart } from '../start/chooseStart.ts';
import type { InlayChalk } from './Inlay.ts';
import { inlayChalk } from './inlayChalk.ts';
import { inlaySides } from './inlaySides.ts';

/** What an inlay adds to a layout, with its own chalk lines. */
export interface LaidInlay extends BorderLaid {
  readonly chalk?: InlayChalk;
}

/** The pieces of an inlay, its courses first; null where the courses leave nothing inside them. */
export function layInlay(
  given: BorderGround,
  spec: InlaySpec,
  place: Obstacle,
  letter: string,
): LaidInlay | null {
  const { job, surface, frame, soft = [] } = given;
  const sides = sidesOf(place);
  if (!spec.border) return fieldOf(given, spec, floorIn(given, spec, place.ring), { letter, place });
  const ground = { job, surface, frame, soft };
  const made = layCourses(ground, sides, spec.border, (_, at) => `${letter}${'abcd'[at] ?? at}`);
  if ('wall' in made) return null;
  const strips = made.strips.map((strip) => ({ ...strip, of: { ...strip.of, inlay: spec.name } }));
  const inner = made.inner.edges.map(({ from }) => from);
  const drawnIn = floorIn(given, spec, inner, job.joint);
  const own = fieldOf(given, spec, drawnIn, { letter, place });
  return own && { ...own, ...together(borderPieces(strips, job.joint), own) };
}

function together(one: BorderLaid, other: BorderLaid): BorderLaid {
  return {
    pieces: [...one.pieces, ...other.pieces],
    left: [...one.left, ...other.left],
    faults: [...one.faults, ...other.faults],
    kept: [...one.kept, ...other.kept],
  };
}

/** The sides of an inlay, the tile on their left. */
function sidesOf({ name, ring }: Obstacle): BorderSide[] {
  return ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return { wall: `${name}:${i + 1}`, from, to, facts: jointFacts(0), doorways: [], standsIn: false };
  });
}

/** The floor of an inlay's own pattern, in that pattern's frame, and the way back to the floor's. */
interface OwnFloor {
  readonly room: RoomInFrame;
  readonly turn: number;
  /** Where its zero lies in the floor's frame. */
  readonly at: Point;
  readonly back: (point: Point) => Point;
}

/** What lies in a ring, a gap off it, as a room of its own turned into the frame of the inlay's pattern, parted by soft joints. */
function floorIn(
  { surface, room, frame, soft = [] }: BorderGround,
  { name, pattern }: InlaySpec,
  ring: Ring,
  gap = 0,
): OwnFloor {
  const turn = turnOf(room, pattern).turn - turnOf(room, surface.pattern).turn;
  const [x, y] = ring[0]!;
  const into = (point: Point) => inTicks(rotate([point[0] - x, point[1] - y], -turn));
  const back = (point: Point) => {
    const [u, v] = rotate(point, turn);
    return inTicks([u + x, v + y]);
  };
  const outline = transformRing(ring, into);
  const sides = outline.map((from, i) => {
    const id = `${name}:${i + 1}`;
    return { ...jointFacts(gap), id, name: id, from, to: outline[(i + 1) % outline.length]! };
  });
  const exact = (turn / (Math.PI / 2)) % 1 === 0;
  const obstacles = frame.obstacles.map((one) => moveObstacle(one, into, exact));
  const through = softThrough([{ outer: ring, holes: [] }], soft);
  const strips = through.map((line) => ({ outer: transformRing(softStrip(line), into), holes: [] }));
  const edges = [...sides, ...softEdges([ring], through).map((edge) => movedEdge(edge, into))];
  return {
    room: { outline, edges, obstacles, field: subtract(makeField(outline, sides, obstacles), strips) },
    turn,
    at: [x, y],
    back,
  };
}

function movedEdge(edge: RoomEdge, move: (point: Point) => Point): RoomEdge {
  return { ...edge, from: move(edge.from), to: move(edge.to) };
}

/** The pieces of an inlay's own pattern, started where they come out best, named one after another from below. */
function fieldOf(
  given: BorderGround,
  { name, pattern: spec, from }: InlaySpec,
  floor: OwnFloor,
  { letter, place }: { readonly letter: string; readonly place: Obstacle },
): LaidInlay | null {
  const { job, surface } = given;
  const pattern = makePattern(spec, job.tiles, job.joint);
  const withJoint = (joint: number) => makePlain(spec, job.tiles, joint);
  const best = { ...surface.start, along: { kind: 'best' }, across: { kind: 'best' } } as const;
  const own = { ...surface, pattern: spec, start: best };
  const ground = makeGround(floor.room, [], own, job.print.step);
  const chosen = chooseStart({ ground, pattern: withJoint(job.joint), surface: own, withJoint });
  if ('unknown' in chosen) return null;
  const { origin } = chosen.start.chosen;
  const laid = layTiles(ground, pattern, origin);
  const all = laidPieces(laid);
  const named = namePieces(all, laid.lattice, origin).map((one, i) => ({ ...one, id: `${letter}-${i + 1}` }));
  const pieces = named.map((one) => pieceOf(one, laid.lattice, ground.faces));
  const { turn, at, room } = floor;
  const chalk = inlayChalk({
    ...{ pattern: withJoint(job.joint), origin, outline: room.outline, pieces, turn, at },
    ...{ ring: place.ring, sides: inlaySides(place.ring, from, wallsOf(given)) },
  });
  const of = { wall: name, course: 0, inlay: name };
  return {
    ...(chalk && { chalk }),
    pieces: pieces.map((one) => broughtBack({ ...one, border: of }, floor)),
    left: laid.left.map(({ shape, face, gap }) => ({
      shape: transformShape(shape, floor.back),
      why: 'gapOnly',
      edge: ground.faces[face]!.id,
      gap,
    })),
    faults: faultsOf(named, laid.left, ground, job.joint),
    kept: [],
  };
}

/** A piece of the inlay's pattern in the frame of the floor's. */
function broughtBack(piece: Piece, { turn, back }: OwnFloor): Piece {
  const degrees = piece.quarter * 90 + (piece.slantDeg ?? 0) + (turn * 180) / Math.PI;
  const quarters = Math.round(degrees / 90);
  const slant = degrees - 90 * quarters;
  const { slantDeg: _, ...rest } = piece;
  return {
    ...rest,
    quarter: (((quarters % 4) + 4) % 4) as Piece['quarter'],
    ...(Math.abs(slant) > 1e-9 && { slantDeg: slant }),
    fullTile: transformRing(piece.fullTile, back),
    shape: transformShape(piece.shape, back),
    circles: piece.circles.map((circle) => ({ ...circle, centre: back(circle.centre) })),
  };
}
