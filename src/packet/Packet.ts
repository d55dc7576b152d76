import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import type { Care } from '../care/Care.ts';
import type { Cut, Row } from '../cuts/Cut.ts';
import type { Point, Ring, Shape } from '../geometry/index.ts';
import type { BaseSpec, DefaultUsed, Job, Meets } from '../job/Job.ts';
import type { Border } from '../layout/border/Border.ts';
import type { CarriedJoint } from '../layout/carriedJoints.ts';
import type { Chips } from '../layout/chips/Chips.ts';
import type { Inlay } from '../layout/inlay/Inlay.ts';
import type { Candidate, Chalk, Fault, FramedRoom, Left, Piece, Start } from '../layout/Layout.ts';
import type { Movement } from '../layout/movement/Movement.ts';
import type { Tapers } from '../layout/taper/Tapers.ts';
import type { WallScore } from '../layout/WallScore.ts';
import type { BaseCheck } from '../materials/baseChecks.ts';
import type { Flatness } from '../materials/Flatness.ts';
import type { HeightResult, Heights } from '../materials/Heights.ts';
import type { Material } from '../materials/Material.ts';
import type { Ticks } from '../measure/index.ts';
import type { Falls } from '../room/Falls.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import type { Adjustment, EdgeArc, Opening } from '../room/Room.ts';
import type { TilePlan } from '../tiles/TilePlan.ts';
import type { Limit } from '../trade/Limit.ts';
import type { Zone } from '../zones/Zone.ts';
import type { SeenPiece } from './seenPieces.ts';

export type { HeightResult, Heights };

/** Everything that is printed, as plain data; every sheet and exported file is a view of it. */
export interface Packet {
  readonly format: 'tile-job-packet/1';
  readonly job: {
    readonly slug: string;
    readonly title: string;
    readonly owner: string;
    readonly place: string;
    readonly status: Job['status'];
    readonly revision: string;
    readonly date: string;
    /** Six characters made from the job's content. */
    readonly stamp: string;
  };
  readonly ticksPerMm: 320;
  readonly rounding: { readonly step: Ticks };
  readonly kerf: Ticks;
  /** The validated job as read, so that a sheet can show readings and defaults. */
  readonly spec: Job;
  readonly surfaces: readonly PacketSurface[];
  readonly tiles: Readonly<Record<string, TilePlan>>;
  readonly layers: BaseSpec['fresh'];
  readonly base: BaseSpec;
  /** Film and moisture of the base; missing in packets from before they were kept. */
  readonly baseChecks?: readonly BaseCheck[];
  readonly heights: Heights;
  readonly limits: readonly Limit[];
  readonly materials: readonly Material[];
  readonly calendar: readonly CalendarEntry[];
  readonly care: Care;
  readonly notes: readonly PacketNote[];
  readonly defaults: readonly DefaultUsed[];
}

export interface PacketSurface {
  readonly name: string;
  readonly kind: 'floor' | 'wall';
  /** Degrees, counter-clockwise, from the pattern's frame back to the room's. */
  readonly turn: number;
  readonly outline: Ring;
  readonly holes: readonly Ring[];
  readonly field: readonly Shape[];
  readonly joint: Ticks;
  readonly edges: readonly PacketEdge[];
  readonly pattern: {
    readonly name: string;
    readonly a: Point;
    readonly b: Point;
    readonly tiles: readonly { readonly tile: string; readonly ring: Ring }[];
  };
  readonly start: Start & {
    readonly axes: readonly string[];
    readonly origin: Point;
    readonly score: WallScore | null;
    readonly reasons: Start['chosen']['reason'];
  };
  readonly pieces: readonly PacketPiece[];
  readonly left: readonly Left[];
  readonly cuts: readonly Cut[];
  readonly rows: readonly Row[];
  readonly chalk: Chalk;
  readonly lines: readonly {
    readonly name: string;
    readonly marks: readonly { readonly edge: string; readonly end: string; readonly distance: Ticks }[];
    readonly check: string;
  }[];
  readonly zones: readonly Zone[];
  readonly faults: readonly Fault[];
  /** How the walls run against the pattern; missing in packets kept from before they were held against it. */
  readonly tapers?: Tapers;
  readonly adjustment: Adjustment;
  readonly openings: readonly Opening[];
  readonly obstacles: FramedRoom['obstacles'];
  /** How it falls to a drain, folds in the frame; missing where it lies level. */
  readonly falls?: Falls;
  readonly areaM2: number;
  /** What was found on the base of this floor, where it lies; missing in packets from before it was kept. */
  readonly base?: PlacedBase;
  /** Which tile joint takes up each base joint and moving crack; missing where there is neither. */
  readonly carried?: readonly CarriedJoint[];
  /** Courses along the walls round the field; missing where there are none. */
  readonly border?: Border;
  /** Rectangles in the field with their own tile and pattern; missing where there are none. */
  readonly inlays?: readonly Inlay[];
  /** The part of the field that the pattern lies on, where there is a border or an inlay. */
  readonly inner?: readonly Shape[];
  /** Mosaic on sheets: its chips, and where sheets are cut between them; missing for other tile. */
  readonly chips?: Chips;
  /** Soft joints through the field; missing where the floor is one bay. */
  readonly movement?: Movement;
  /** What the readings on a grid say, where there are any. */
  readonly flatness?: Flatness;
  /** Another layout that the owner may prefer, while the job is planned and where there is one that looks different. */
  /** The chosen start and others on the curve of narrowest cut against tiles, the widest first after the chosen. */
  readonly curve?: readonly CurvePoint[];
  readonly choice?: PacketChoice;
}

/** A start with the fewest tiles that lay it, the number that no plan goes below, and how many fence settings its saw list has. */
export interface CurvePoint {
  readonly candidate: Candidate;
  readonly tiles: number;
  readonly bound: number;
  readonly fences: number;
  /** Boxes with what breaks, spares and what is kept; where the box is known. */
  readonly boxes?: number;
  readonly pieces: PacketChoice['pieces'];
}

/** A layout that begins elsewhere, laid out as far as it takes to show it. */
export interface PacketChoice {
  readonly candidate: Candidate;
  readonly pieces: readonly SeenPiece[];
  /** What would have to be bought of each tile, by its key. */
  readonly buy: Readonly<Record<string, { readonly buy: number; readonly boxes: number }>>;
}

export interface PacketEdge {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly meets: Meets;
  readonly gap: Ticks;
  readonly gapMax: Ticks;
  readonly touch: boolean;
  readonly seen: 'hidden' | 'plain' | 'focal';
  readonly readings: readonly Ticks[];
  readonly used: Ticks;
  /** Of a bowed or curved wall, of which this edge is one chord. */
  readonly arc?: EdgeArc;
}

export interface PacketPiece extends Piece {
  readonly zone: number;
  /** Number of its cut; null for a whole tile. */
  readonly cut: number | null;
}

export interface PacketNote {
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
  readonly at: readonly string[];
  readonly level: 'info' | 'warn' | 'fail';
  /** The floor it is about, where the job has several and it is about one. */
  readonly surface?: string;
  /** The sentence in English, so that the file can be read by itself. */
  readonly words: string;
}
