import type { Point, Ring, Shape } from '../geometry/index.ts';
import type { EdgeFacts } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern } from '../pattern/Pattern.ts';
import type { Falls } from '../room/Falls.ts';
import type { RoomEdge } from '../room/Room.ts';
import type { Border, OfBorder } from './border/Border.ts';
import type { Chips } from './chips/Chips.ts';
import type { Inlay } from './inlay/Inlay.ts';
import type { Movement } from './movement/Movement.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import type { Tapers } from './taper/Tapers.ts';
import type { WallScore } from './WallScore.ts';

/** A pattern laid on a room. Everything here is in the pattern's frame; `turn` (radians) brings it back to the room's. */
export interface Layout {
  readonly surface: string;
  readonly turn: number;
  readonly frame: FramedRoom;
  readonly pattern: Pattern;
  /** Where repeat (0, 0) stands, before the pattern is pulled apart. */
  readonly origin: Point;
  /** Joints that are laid wider than the others; missing where all are alike. */
  readonly wide?: readonly WideJoint[];
  readonly start: Start;
  /** Starts so near to the chosen one that the number of tiles may decide; missing where there are none. */
  readonly rivals?: readonly Rival[];
  readonly pieces: readonly Piece[];
  readonly left: readonly Left[];
  /** Field as tiled: the room's field, plus what a tile kept whole covers of the gap. */
  readonly field: readonly Shape[];
  readonly chalk: Chalk;
  readonly faults: readonly Fault[];
  readonly tapers: Tapers;
  /** Courses along the walls, round the field that the pattern lies on. */
  readonly border?: Border;
  /** Rectangles in the field with their own tile and pattern. */
  readonly inlays?: readonly Inlay[];
  /** Where there is a border or an inlay: the part of the field that the pattern lies on. */
  readonly inner?: readonly Shape[];
  /** Mosaic on sheets: its chips, and where sheets are cut between them. */
  readonly chips?: Chips;
  /** Soft joints of a floor that is longer than one bay; placed once its base is known. */
  readonly movement?: Movement;
}

/** The room turned once into the pattern's frame. */
export interface FramedRoom {
  readonly outline: Ring;
  readonly edges: readonly RoomEdge[];
  readonly obstacles: readonly {
    readonly name: string;
    readonly facts: EdgeFacts;
    readonly ring: Ring;
    readonly cleared: Ring;
    readonly circle?: { readonly centre: Point; readonly radius: Ticks; readonly clearRadius: Ticks };
    readonly edges: readonly RoomEdge[];
  }[];
  readonly field: readonly Shape[];
  /** How it falls to a drain; missing where it lies level. */
  readonly falls?: Falls;
}

export interface Piece {
  /** Where it lies from the chalk crossing, such as `K3-2`, or along which wall, such as `AB-3`; a second piece of the same tile ends in `b`. */
  readonly id: string;
  readonly tile: string;
  readonly whole: boolean;
  /** Ring of the whole tile in place. */
  readonly fullTile: Ring;
  /** Quarter turns of the tile's own axes to the frame. */
  readonly quarter: 0 | 1 | 2 | 3;
  /** Degrees by which it is turned beyond that, where it is. */
  readonly slantDeg?: number;
  readonly shape: Shape;
  readonly column: number;
  readonly row: number;
  /** Ids of the room edges that cut it. */
  readonly edges: readonly string[];
  /** Smallest extent along the tile's own axes as a share of the tile. */
  readonly share: number;
  readonly seen: 'hidden' | 'plain' | 'focal';
  /** Of which wall and course it is, where it is a piece of a border or of an inlay. */
  readonly border?: OfBorder;
  /** Circles that cut it. */
  readonly circles: readonly { readonly name: string; readonly centre: Point; readonly radius: Ticks }[];
  /** Curves of bowed and curved walls along which it is cut, their gap taken off. */
  readonly curves?: readonly { readonly centre: Point; readonly radius: Ticks }[];
}

export interface Left {
  readonly shape: Shape;
  readonly why: 'gapOnly' | 'sliver';
  readonly edge: string;
  /** The gap that results there. */
  readonly gap: Ticks;
}

export interface Start {
  readonly along: AxisStart;
  readonly across: AxisStart;
  readonly chosen: Candidate;
  /** What no start that the job allows can be better than along the walls that are seen, each figure within those before it. */
  readonly bound: WallScore;
  readonly runnerUp?: Candidate;
  /** Further layouts worth a look, such as balanced on another run or shifted clear of an opening. */
  readonly alternatives: readonly Candidate[];
}

/** A start that is nearly as good as the chosen one, so that what comes after may decide between them. */
export type Rival = Pick<Start, 'along' | 'across' | 'chosen'>;

export interface AxisStart {
  readonly wish: string;
  /** What lies on the centre or the line. */
  readonly what: 'joint' | 'tile' | 'jointQuarter' | 'tileQuarter' | 'fixed' | 'searched' | 'forTiles';
  readonly position: Ticks;
  /** The run that was centred, when one was: edge ids and length. */
  readonly run?: { readonly from: string; readonly to: string; readonly length: Ticks };
}

export interface Candidate {
  readonly origin: Point;
  /** Codes such as `start.jointCentred`, one an axis. */
  readonly reason: readonly {
    readonly code: string;
    readonly figures: Readonly<Record<string, number | string>>;
  }[];
  readonly pieces: number;
  readonly whole: number;
  readonly cut: number;
  /** Sum of sawn lengths. */
  readonly cutLength: Ticks;
  /** Smallest piece in sight, share and size. */
  readonly smallestShare: number;
  readonly smallest: Ticks;
  /** Size of the same piece at its narrow end, where it is four-sided: it is less than `smallest` where a wall leans. */
  readonly smallestEnd?: Ticks;
  readonly underHalf: number;
  /** Pieces in sight thinner than the least strip. */
  readonly thin?: number;
  /** Pieces too thin to be sawn, in sight or not: under half of the least web. */
  readonly slivers?: number;
  readonly nearFull: number;
  readonly webFaults: number;
  /** Pieces with an inner corner, a hole or a curve; a hard cut, which has a card, may have none of them. */
  readonly hardCuts: number;
  readonly shift: Ticks;
  /** What the walls that are seen make of it. */
  readonly walls?: WallScore;
  /** Cuts at the ends of each axis' longest run: low side, high side. */
  readonly ends: { readonly along: readonly [Ticks, Ticks]; readonly across: readonly [Ticks, Ticks] };
}

/** Two lines on joints, square to each other in the frame, each with marks a tape can reach. */
export interface Chalk {
  /** Point where both lines meet: on the middle of a joint each way. Pieces are named from here. */
  readonly crossing: Point;
  readonly lines: readonly ChalkLine[];
  readonly check: { readonly legs: readonly [Ticks, Ticks]; readonly diagonal: Ticks };
  /** Id of the first piece to set, in the upper right of the crossing where it exists; in a packet that of the first zone. */
  readonly firstPiece: string;
  /** Where tiles lie in no courses, or the first is none at the crossing: how far it stands from the upright line and the level one, in zigzag on either side of them, and whether joints run along both. */
  readonly guide?: { readonly along: Ticks; readonly across: Ticks; readonly onJoints: boolean };
  /** Lines beside these two, a whole number of modules from them, so that drift is seen; in the order of snapping. */
  readonly further?: readonly ChalkLine[];
  /** Where tiles lie in zigzag: the further lines run along it so far apart, and a tile's corner stands on each of them every so many ticks. */
  readonly corners?: { readonly apart: Ticks; readonly every: Ticks };
  /** What may be snapped before each zone but the first, on floor that is still bare then. */
  readonly later?: readonly LaterLines[];
  /** Where the pattern follows a line from place to place: that line, and how far from it the chalk line lies that runs with it. */
  readonly sight?: Sight;
  /** A stick an axis, laid with its end on a chalk line: where joints lie on it. */
  readonly poles?: readonly StoryPole[];
}

export interface Sight {
  readonly from: Point;
  readonly to: Point;
  /** Name of the chalk line that runs with it, and how far square to it that lies; missing where the pattern is turned on top. */
  readonly beside?: { readonly line: string; readonly off: Ticks };
}

export interface LaterLines {
  readonly zone: number;
  /** Names of lines that lie wholly on bare floor. */
  readonly bare: readonly string[];
  /** Lines for the place of those that are covered; none where enough are bare. */
  readonly lines: readonly ChalkLine[];
}

export interface StoryPole {
  readonly axis: 'along' | 'across';
  readonly module: Ticks;
  /** Running distances from the end of the stick to the middle of each joint. */
  readonly joints: readonly Ticks[];
}

export interface ChalkLine {
  /** Its place in the order of snapping. */
  readonly name: '1' | '2' | string;
  /** The axis on which it has one place: a line `along` stands upright in the frame. */
  readonly axis?: 'along' | 'across';
  /** Ends on the room's faces. */
  readonly from: Point;
  readonly to: Point;
  readonly marks: readonly ChalkMark[];
  /** False when fewer than two marks can be reached at least 24 in apart; then it is struck by `offsets` or squared off the other line. */
  readonly snappable: boolean;
  /** True where a line without two marks is truer through the ends of its `offsets` than squared off the other line. */
  readonly byOffsets?: true;
  /** Where courses are shifted: the line lies on joints of the course of row `first` and of each `every`-th from it; 0 for that one only. */
  readonly courses?: { readonly first: number; readonly every: number };
  /** Distances square from one long face to the line, at two places along that face. */
  readonly offsets?: {
    readonly edge: string;
    readonly end: string;
    readonly stations: readonly { readonly distance: Ticks; readonly offset: Ticks }[];
  };
  /** How far it may lie off its place anywhere from face to face, and turn over a length, in 95 of 100 rooms. */
  readonly error?: { readonly off: Ticks; readonly turn: Ticks; readonly over: Ticks };
  /** Where a start is laid from a doorway: the tile that begins at the line, and how far from the edge of the first one. */
  readonly counted?: { readonly from: string; readonly tile: number; readonly distance: Ticks };
}

export interface ChalkMark {
  /** Edge along which the tape lies. */
  readonly edge: string;
  /** End of that edge the tape's zero is hooked on: the corner's name. */
  readonly end: string;
  /** Running distance from that end along the edge. */
  readonly distance: Ticks;
  readonly at: Point;
  /** From the ends on both sides, where both can be reached; between two corners they sum to the wall as used. */
  readonly both?: readonly [TapeEnd, TapeEnd];
}

export interface TapeEnd {
  readonly end: string;
  readonly distance: Ticks;
}

export interface Fault {
  readonly code:
    | 'underHalf'
    | 'thinStrip'
    | 'web'
    | 'nearFull'
    | 'sliver'
    | 'keptWhole'
    | 'gapOnly'
    /** No start at this offset ends every course in the least cut. */
    | 'offsetBound'
    /** A tile lacks what would make all joints of the pattern alike. */
    | 'jointsVary'
    /** A joint of the pattern falls beside the border, so that the one there is wider. */
    | 'borderJoint';
  readonly pieces: readonly string[];
  readonly figures: Readonly<Record<string, number | string>>;
  readonly edge?: string;
}
