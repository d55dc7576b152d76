import type { Point, Ring } from '../geometry/index.ts';
import type { EdgeFacts, SurfaceSpec } from '../job/Job.ts';
import type { PlacedDoorway } from './placeDoorway.ts';
import type { EdgeArc, Opening, RoomEdge } from './Room.ts';
import { bendsOf, bowAt, edgeArc, pointOnWall, type WallLine } from './wallLine.ts';

/** A point of the outline and the edge that begins there. */
interface Begin {
  readonly at: Point;
  readonly id: string;
  readonly name: string;
  readonly facts: EdgeFacts;
  readonly arc?: EdgeArc;
}

const numbered = (id: string, count: number) => (count === 1 ? id : `${id}.${count}`);

/** Edges of a doorway in the order walked: right side, closed-door line, left side; sides count from the room's face. */
function doorwayBegins(wall: WallLine, { spec, ...door }: PlacedDoorway): Begin[] {
  const { name } = spec;
  const at = doorPoint(wall, door);
  const right = door.rightSteps.map(({ out, depth }) => at(door.right - out, depth));
  const left = door.leftSteps.map(({ out, depth }) => at(door.left + out, depth));
  const line = { id: `${name}:line`, name, facts: spec.line };
  if (right.length === 0 || left.length === 0) return [{ at: pointOnWall(wall, door.right, 0), ...line }];
  return [
    ...right
      .slice(0, -1)
      .map((at, i) => ({ at, id: numbered(`${name}:right`, i + 1), name, facts: spec.right.facts })),
    { at: right.at(-1)!, ...line },
    ...left
      .slice(1)
      .map((at, i) => ({ at, id: numbered(`${name}:left`, i + 1), name, facts: spec.left.facts }))
      .reverse(),
  ];
}

/**
 * Points of a doorway by their place along the wall and their depth behind its face. In a bowed wall the recess is straight all the
 * same: its depth counts from the face at the middle of the opening, while its edges on the face lie on the face.
 */
function doorPoint(wall: WallLine, { right, left }: Pick<PlacedDoorway, 'right' | 'left'>) {
  const middle = bowAt(wall, (right + left) / 2);
  return (u: number, depth: number): Point =>
    pointOnWall(wall, u, depth === 0 ? 0 : depth + middle - bowAt(wall, u));
}

/** Edges of one wall: its own pieces between its doorways, and the doorways' edges. */
function wallBegins(wall: WallLine, facts: EdgeFacts, doors: readonly PlacedDoorway[]): Begin[] {
  const begins: Begin[] = [];
  const arc = edgeArc(wall);
  let pieces = 0;
  const goOn = (from: number, to: number) => {
    const places = [from, ...bendsOf(wall, from, to), to].map((u) => pointOnWall(wall, u, 0));
    for (const [i, at] of places.slice(0, -1).entries()) {
      if (`${at}` === `${places[i + 1]}`) continue;
      pieces += 1;
      begins.push({ at, id: numbered(wall.id, pieces), name: wall.id, facts, ...(arc && { arc }) });
    }
  };
  let reached = 0;
  for (const door of doors) {
    // A post leaves the wall's face whole up to the clear opening; casing to slide under opens it wider.
    goOn(reached, door.right - (door.rightSteps[0]?.out ?? 0));
    begins.push(...doorwayBegins(wall, door));
    reached = door.left + (door.leftSteps[0]?.out ?? 0);
  }
  goOn(reached, wall.length);
  return begins;
}

const factsOnly = ({ meets, gap, gapMax, touch, seen }: EdgeFacts): EdgeFacts => ({
  meets,
  gap,
  gapMax,
  touch,
  seen,
});

/** The room's outline with its doorways' recesses, edge by edge; edges of no length are left out. */
export function makeOutline(
  surface: SurfaceSpec,
  walls: readonly WallLine[],
  doors: readonly PlacedDoorway[],
): { readonly outline: Ring; readonly edges: readonly RoomEdge[] } {
  const begins = walls.flatMap((wall, i) => {
    const own = doors.filter(({ spec }) => spec.wall === wall.id).sort((a, b) => a.right - b.right);
    return wallBegins(wall, surface.walls[i]!, own);
  });
  const edges = begins.map(({ at, id, name, facts, arc }, i): RoomEdge => {
    const to = begins[(i + 1) % begins.length]!.at;
    return { id, name, ...factsOnly(facts), from: at, to, ...(arc && { arc }) };
  });
  const real = edges.filter(({ from, to }) => from[0] !== to[0] || from[1] !== to[1]);
  return { outline: real.map(({ from }) => from), edges: real };
}

/** What the sheets say of a doorway. The line is as long as its edge, with what lies under casing and behind posts. */
export function makeOpening(wall: WallLine, door: PlacedDoorway): Opening {
  const { spec, left, right, leftSteps, rightSteps } = door;
  const at = doorPoint(wall, door);
  const end = (u: number, steps: PlacedDoorway['leftSteps'], sign: 1 | -1) =>
    at(u + sign * (steps.at(-1)?.out ?? 0), steps.at(-1)?.depth ?? 0);
  return {
    name: spec.name,
    wall: wall.id,
    line: [end(left, leftSteps, 1), end(right, rightSteps, -1)],
    face: [pointOnWall(wall, left, 0), pointOnWall(wall, right, 0)],
    beyond: spec.beyond,
    onlyExit: spec.onlyExit,
  };
}
