import type { Point, Ring } from '../geometry/index.ts';
import type { EdgeFacts, SurfaceSpec } from '../job/Job.ts';
import type { PlacedDoorway } from './placeDoorway.ts';
import type { Opening, RoomEdge } from './Room.ts';
import { pointOnWall, type WallLine } from './wallLine.ts';

/** A point of the outline and the edge that begins there. */
interface Begin {
  readonly at: Point;
  readonly id: string;
  readonly name: string;
  readonly facts: EdgeFacts;
}

const numbered = (id: string, count: number) => (count === 1 ? id : `${id}.${count}`);

/** Edges of a doorway in the order walked: right side, closed-door line, left side; sides count from the room's face. */
function doorwayBegins(wall: WallLine, { spec, ...door }: PlacedDoorway): Begin[] {
  const { name } = spec;
  const right = door.rightSteps.map(({ out, depth }) => pointOnWall(wall, door.right - out, depth));
  const left = door.leftSteps.map(({ out, depth }) => pointOnWall(wall, door.left + out, depth));
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

/** Edges of one wall: its own pieces between its doorways, and the doorways' edges. */
function wallBegins(wall: WallLine, facts: EdgeFacts, doors: readonly PlacedDoorway[]): Begin[] {
  const begins: Begin[] = [];
  let pieces = 0;
  const goOn = (at: Point, until: Point) => {
    if (at[0] === until[0] && at[1] === until[1]) return;
    pieces += 1;
    begins.push({ at, id: numbered(wall.id, pieces), name: wall.id, facts });
  };
  let reached = wall.from;
  for (const door of doors) {
    // A post leaves the wall's face whole up to the clear opening; casing to slide under opens it wider.
    goOn(reached, pointOnWall(wall, door.right - (door.rightSteps[0]?.out ?? 0), 0));
    begins.push(...doorwayBegins(wall, door));
    reached = pointOnWall(wall, door.left + (door.leftSteps[0]?.out ?? 0), 0);
  }
  goOn(reached, wall.to);
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
  const edges = begins.map(({ at, id, name, facts }, i): RoomEdge => {
    return { id, name, ...factsOnly(facts), from: at, to: begins[(i + 1) % begins.length]!.at };
  });
  const real = edges.filter(({ from, to }) => from[0] !== to[0] || from[1] !== to[1]);
  return { outline: real.map(({ from }) => from), edges: real };
}

/** What the sheets say of a doorway. The line is as long as its edge, with what lies under casing and behind posts. */
export function makeOpening(wall: WallLine, door: PlacedDoorway): Opening {
  const { spec, left, right, leftSteps, rightSteps } = door;
  const end = (u: number, steps: PlacedDoorway['leftSteps'], sign: 1 | -1) =>
    pointOnWall(wall, u + sign * (steps.at(-1)?.out ?? 0), steps.at(-1)?.depth ?? 0);
  return {
    name: spec.name,
    wall: wall.id,
    line: [end(left, leftSteps, 1), end(right, rightSteps, -1)],
    face: [pointOnWall(wall, left, 0), pointOnWall(wall, right, 0)],
    beyond: spec.beyond,
    onlyExit: spec.onlyExit,
  };
}
