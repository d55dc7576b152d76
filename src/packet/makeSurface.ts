import type { Cuts } from '../cuts/Cut.ts';
import { type Point, rotateRound, shapeArea } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import { carriedJoints } from '../layout/carriedJoints.ts';
import { chalkGround } from '../layout/chalk/chalkGround.ts';
import { laterLines } from '../layout/chalk/laterLines.ts';
import type { Chalk, Layout } from '../layout/Layout.ts';
import { floorFlatness } from '../materials/floorFlatness.ts';
import { areaM2Of } from '../measure/index.ts';
import { isFold } from '../room/isFold.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import type { Opening, Room, RoomEdge } from '../room/Room.ts';
import { firstOfWork } from '../zones/firstOfWork.ts';
import type { Zone } from '../zones/Zone.ts';
import type { PacketEdge, PacketPiece, PacketSurface } from './Packet.ts';
import { toldInside } from './toldInside.ts';
import { turnedBase } from './turnedBase.ts';

/** What the stages made of one surface. */
export interface Stages {
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly base: PlacedBase;
  readonly layout: Layout;
  readonly cuts: Cuts;
  readonly zones: readonly Zone[];
}

/** One surface of the packet: all coordinates in the pattern's frame, in ticks; `turn` in degrees brings them back to the room's. */
export function makeSurface(job: Job, stage: Stages): PacketSurface {
  const { surface, room, layout, cuts, zones } = stage;
  const { frame, pattern, start, chalk } = layout;
  const base = turnedBase(stage.base, layout.turn);
  const carried = carriedJoints(layout, base);
  const standing = frame.obstacles.filter((obstacle) => !isFold(obstacle));
  const flatness = floorFlatness(job, surface, layout);
  return {
    name: surface.name,
    kind: surface.kind,
    turn: (layout.turn * 180) / Math.PI,
    outline: frame.outline,
    holes: standing.map((obstacle) => [...obstacle.ring].reverse()),
    field: layout.field,
    joint: job.joint,
    edges: [...frame.edges, ...standing.flatMap((obstacle) => obstacle.edges)].map((edge) =>
      packetEdge(surface, room, edge),
    ),
    pattern: {
      name: pattern.name,
      a: pattern.a,
      b: pattern.b,
      tiles: pattern.tiles.map(({ tile, ring }) => ({ tile, ring })),
    },
    start: {
      ...toldInside(job, stage),
      axes: [start.along.wish, start.across.wish],
      origin: layout.origin,
      score: start.chosen.walls ?? null,
      bound: start.bound,
      reasons: start.chosen.reason,
    },
    pieces: packetPieces(stage),
    left: layout.left,
    cuts: cuts.cuts,
    rows: cuts.rows,
    chalk: zones.length > 1 ? { ...chalk, ...begun(stage), later: laterOf(job, stage) } : chalk,
    lines: chalk.lines.map(({ name, marks }) => ({
      name,
      marks: marks.map(({ edge, end, distance }) => ({ edge, end, distance })),
      check: `${chalk.check.legs[0]} ${chalk.check.legs[1]} ${chalk.check.diagonal}`,
    })),
    zones,
    faults: layout.faults,
    tapers: layout.tapers,
    adjustment: room.adjustment,
    openings: room.openings.map((opening) => turned(opening, layout.turn)),
    obstacles: standing,
    ...(frame.falls ? { falls: frame.falls } : {}),
    areaM2: areaOf(layout),
    base,
    ...(carried.length > 0 ? { carried } : {}),
    ...(layout.border ? { border: layout.border } : {}),
    ...(layout.inlays ? { inlays: layout.inlays } : {}),
    ...(layout.chips ? { chips: layout.chips } : {}),
    ...(layout.inner ? { inner: layout.inner } : {}),
    ...(layout.movement ? { movement: layout.movement } : {}),
    ...(flatness ? { flatness } : {}),
  };
}

function areaOf(layout: Layout): number {
  return areaM2Of(layout.field.reduce((sum, shape) => sum + shapeArea(shape), 0));
}

/** Where the floor is begun: a floor of several zones in the one that is set first. */
function begun({ layout, zones }: Stages): Pick<Chalk, 'firstPiece' | 'guide'> {
  const own = new Set(zones[0]!.pieces);
  return firstOfWork(
    layout,
    layout.pieces.filter(({ id }) => own.has(id)),
  );
}

function laterOf(job: Job, { surface, room, layout, zones }: Stages): Chalk['later'] {
  const ground = chalkGround(job, surface, room, layout.frame);
  return laterLines(
    layout,
    ground,
    zones.map(({ pieces }) => pieces),
  );
}

function packetEdge(surface: SurfaceSpec, room: Room, edge: RoomEdge): PacketEdge {
  const reading = room.adjustment.readings.find((one) => one.id === edge.name);
  const wall = surface.walls.find((one) => one.id === edge.name);
  return {
    id: edge.id,
    from: edge.from,
    to: edge.to,
    meets: edge.meets,
    gap: edge.gap,
    gapMax: edge.gapMax,
    touch: edge.touch,
    seen: edge.seen,
    readings: wall?.readings ?? [],
    used: reading?.used ?? Math.round(Math.hypot(edge.to[0] - edge.from[0], edge.to[1] - edge.from[1])),
    ...(edge.arc && { arc: edge.arc }),
  };
}

function packetPieces({ layout, cuts, zones }: Stages): PacketPiece[] {
  const cutOf = new Map(cuts.cuts.flatMap((cut) => cut.pieces.map((piece) => [piece, cut.number] as const)));
  const zoneOf = new Map(zones.flatMap((zone) => zone.pieces.map((piece) => [piece, zone.number] as const)));
  return layout.pieces.map((piece) => ({
    ...piece,
    zone: zoneOf.get(piece.id) ?? 1,
    cut: cutOf.get(piece.id) ?? null,
  }));
}

/** An opening of the room in the pattern's frame. */
function turned(opening: Opening, turn: number): Opening {
  const ends = ([left, right]: readonly [Point, Point]) =>
    [rotateRound(left, -turn), rotateRound(right, -turn)] as const;
  return turn === 0 ? opening : { ...opening, line: ends(opening.line), face: ends(opening.face) };
}
