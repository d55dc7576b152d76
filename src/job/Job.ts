import type { Point } from '../geometry/index.ts';
import type { System, Ticks } from '../measure/index.ts';
import type { SawnAs, StartTolerance } from '../trade/index.ts';

/** A validated job: every default is filled in, every length is in ticks, every name resolved. */
export interface Job {
  readonly slug: string;
  readonly title: string;
  readonly owner: string;
  readonly place: string;
  readonly status: 'planned' | 'underway' | 'finished';
  readonly revision: { readonly letter: string; readonly date: string };
  readonly print: Print;
  readonly work: Work;
  /** Year the house was built; undefined when unknown. */
  readonly houseYear?: number;
  readonly tiles: readonly TileSpec[];
  readonly joint: Ticks;
  readonly surfaces: readonly SurfaceSpec[];
  readonly base: BaseSpec;
  readonly products: Products;
  readonly saw: { readonly kerf: Ticks };
  readonly offcuts: Offcuts;
  readonly waste: Waste;
  readonly access: Access;
  /** As found on the first visit; missing where nobody wrote anything. */
  readonly site?: Site;
  readonly contacts: { readonly setter?: string; readonly phone?: string };
  /** Settings that nobody wrote: shown on the job sheet so that nothing is silently assumed. */
  readonly defaults: readonly DefaultUsed[];
  /** Path of a picture inside the job's folder. */
  readonly picture?: string;
}

export interface DefaultUsed {
  /** Path in the job file, such as `floor.gap`. */
  readonly path: string;
  readonly figures: Readonly<Record<string, string | number>>;
}

export interface Print {
  readonly paper: 'letter' | 'a4';
  readonly system: System;
  /** Saw step in ticks: 508 = 1/16 in, 254 = 1/32 in, 320 = 1 mm, 160 = 0.5 mm. */
  readonly step: Ticks;
  /** Crew languages, one or two; the first is the sheet's language. */
  readonly crew: readonly string[];
  readonly owner: string;
}

export interface Work {
  /** First working day, ISO date. */
  readonly from: string;
  /** Working weekdays, 1 = Monday … 7 = Sunday. */
  readonly days: readonly number[];
  /** Days on which nobody works though they are working weekdays, ISO dates. */
  readonly daysOff: readonly string[];
  /** Start and end of the working day in minutes after midnight. */
  readonly startMinute: number;
  readonly endMinute: number;
  /** Setting pace in square metres an hour. */
  readonly paceM2PerHour: number;
  /** Room temperature in °C while it cures. */
  readonly tempC: number;
}

/** A chip of mosaic that is round, or a hexagon: its diameter, or from flat to flat. */
export interface Chip {
  readonly kind: 'round' | 'hexagon';
  readonly across: Ticks;
}

export interface TileSpec {
  /** Key in the job file, such as `field`. */
  readonly key: string;
  readonly name: string;
  /** Readings as taken: [length, width] each. */
  readonly readings: readonly (readonly [Ticks, Ticks])[];
  /** What the tile is where it is no rectangle; its length and width are then its extents as it lies in its pattern. */
  readonly shape?: TileShape;
  /** Mean of the readings, along and across. */
  readonly length: Ticks;
  readonly width: Ticks;
  /** Chips along and across, where it is a sheet of mosaic; between them lies the joint of the job. */
  readonly chips?: readonly [number, number];
  /** What those chips are where they are no squares or rectangles. */
  readonly chip?: Chip;
  /** Largest minus smallest over all readings of the same side. */
  readonly spread: Ticks;
  /** A row laid out dry with its joints, along the tile's length, as read; missing where nobody laid one. */
  readonly run?: { readonly tiles: number; readonly read: Ticks };
  readonly thickness: Ticks;
  readonly edge: 'rectified' | 'calibrated' | 'natural';
  readonly bow: Ticks;
  /** How a piece may be turned in its plane: any right angle that fits its shape, half turns only, or not at all. */
  readonly turns: 'any' | 'half' | 'none';
  readonly material: 'porcelain' | 'ceramic' | 'stone' | 'cement' | 'glass';
  readonly glazed: boolean;
  /** Wet friction of its face as its data sheet has it; missing where nobody looked. */
  readonly friction?: number;
  readonly box?: {
    readonly pieces: number;
    readonly price?: number;
    readonly lot?: string;
    readonly caliber?: string;
    readonly shade?: string;
  };
  /** Pieces already on hand. */
  readonly onHand: number;
  readonly mockUp?: { readonly by: string; readonly date: string };
}

export type TileShape =
  /** Length is across flats, width across points. */
  | { readonly kind: 'hexagon' }
  /** Length and width are across flats; `corner` is what the cut corner takes of each side. */
  | { readonly kind: 'octagon'; readonly corner: Ticks }
  /** Length and width are its diagonals. */
  | { readonly kind: 'rhombus' }
  /** Ends stand upright; the long sides rise by `rise` from end to end, to the right or to the left. */
  | { readonly kind: 'chevron'; readonly rise: Ticks; readonly hand: 'left' | 'right' }
  /** Length and width are its diameter. */
  | { readonly kind: 'round' };

export interface SurfaceSpec {
  readonly name: string;
  readonly kind: 'floor' | 'wall';
  /** Corner names in the order walked, the surface on the left (counter-clockwise). */
  readonly corners: readonly Corner[];
  readonly walls: readonly WallSpec[];
  readonly diagonals: readonly DiagonalSpec[];
  /** How exact one reading is, where nothing else is said of it. */
  readonly precision: Precision;
  readonly cornerChecks: readonly CornerCheckSpec[];
  readonly baseLine: readonly BaseLineSpec[];
  /** Ids of readings that take no part in the shape. */
  readonly setAside: readonly string[];
  readonly doorways: readonly DoorwaySpec[];
  readonly obstacles: readonly ObstacleSpec[];
  readonly exposure: 'dry' | 'wet' | 'sun' | 'outside';
  /** How it falls to a drain; missing where it lies level. */
  readonly falls?: FallsSpec;
  readonly pattern: PatternSpec;
  /** Courses that follow the walls round the pattern, from the wall inwards; missing where there are none. */
  readonly border?: readonly BorderCourse[];
  /** Rectangles in the field with a tile and a pattern of their own; missing where there are none. */
  readonly inlays?: readonly InlaySpec[];
  readonly start: StartSpec;
  readonly zones: ZoneWish;
  /** Least width of tile left between an opening and a tile's edge. */
  readonly minWeb: Ticks;
  /** A strip in sight thinner than this is flagged. */
  readonly minStrip: Ticks;
  /** Share of a tile under which a cut is flagged, 0.5 by default. */
  readonly minShare: number;
  /** Share of its narrowest cut from which a taper is told to show, and how much a focal wall's weighs; the trade's where missing. */
  readonly taperShows?: number;
  readonly focalWeight?: number;
}

export interface FallsSpec {
  /** Name of the drain, an obstacle. */
  readonly to: string;
  /** Walls that the floor falls from, one plane each. */
  readonly from: readonly string[];
  /** Whether tile is cut along the folds between the planes. */
  readonly folds: 'drawn' | 'cut';
  /** Joint along a fold that is cut. */
  readonly joint: Ticks;
}

/** Standard deviation of one reading; where it is `unknown`, `sd` only says how readings weigh against each other. */
export interface Precision {
  readonly kind: 'stated' | 'unknown';
  readonly sd: Ticks;
}

/** Marks on the wall that comes to a corner and on the one that leaves it, and what was read between the marks. */
export interface CornerCheckSpec {
  readonly corner: string;
  readonly legs: readonly [Ticks, Ticks];
  readonly readings: readonly Ticks[];
}

/** A corner as seen from a snapped line: how far along it, and how far square off it, on its other side negative. */
export interface BaseLineSpec {
  readonly corner: string;
  readonly along: Ticks;
  readonly off: Ticks;
}

export interface Corner {
  readonly name: string;
  /** Inner angle in degrees as taken by eye or square; 90 unless said. Used where readings don't fix the shape. */
  readonly angleDeg: number;
}

/** What a tile setter needs to know of any edge of the field. */
export interface EdgeFacts {
  readonly meets: Meets;
  readonly gap: Ticks;
  /** Largest gap that is still covered. */
  readonly gapMax: Ticks;
  /** Can a tape reach this face at floor level. */
  readonly touch: boolean;
  readonly seen: 'hidden' | 'plain' | 'focal';
}

export type Meets =
  | 'wall'
  | 'cabinet'
  | 'tub'
  | 'doorway'
  | 'floor'
  | 'hearth'
  | 'casing'
  | 'post'
  | 'jamb'
  | 'flange'
  | 'pipe'
  | 'column'
  | 'island'
  | 'stair'
  | 'drain'
  /** Where two planes of a floor that falls meet and tile is cut, which the job file never names: at a joint. */
  | 'fold'
  /** A course of a border, which the job file never names: tile meets it at a joint. */
  | 'border';

export interface WallSpec extends EdgeFacts {
  /** `A-B`. */
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly readings: readonly Ticks[];
  /** Standard deviation of one of these readings where it is not that of the surface. */
  readonly sd?: Ticks;
  /** By how much the wall's middle stands out of the room, off a straight line between its ends; less than 0 into it. */
  readonly rise?: Ticks;
}

export interface DiagonalSpec {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly readings: readonly Ticks[];
  readonly sd?: Ticks;
}

export interface DoorwaySpec {
  readonly name: string;
  /** Wall id, such as `D-A`. */
  readonly wall: string;
  /** Distance of the nearer side of the clear opening from `fromCorner`, along the wall. */
  readonly fromCorner: string;
  readonly from: Ticks;
  /** Free width between the two sides. */
  readonly clear: Ticks;
  readonly wallThickness: Ticks;
  /** Distance of the closed-door line from the room's face of the wall; tile ends there. */
  readonly doorLine: Ticks;
  /** As you stand in the room and face the door. */
  readonly left: DoorSide;
  readonly right: DoorSide;
  readonly beyond: 'carpet' | 'wood' | 'tile' | 'vinyl' | 'concrete' | 'later';
  /** Facts of the door line itself. */
  readonly line: EdgeFacts;
  /** Whether this is the only way out. */
  readonly onlyExit: boolean;
}

export type DoorSide =
  /** The tile slides under casing or jamb by `tuck`; the field reaches `tuck` past the clear opening. */
  | { readonly kind: 'undercut'; readonly tuck: Ticks; readonly facts: EdgeFacts }
  /** A stud or jamb that stays: `width` along the wall, `depth` into it from the room's face, its face at the edge of the
   *  clear opening. Where `depth` is less than the door line, the field goes on behind it, `width` wide. */
  | { readonly kind: 'post'; readonly width: Ticks; readonly depth: Ticks; readonly facts: EdgeFacts }
  | { readonly kind: 'plain'; readonly facts: EdgeFacts };

export interface ObstacleSpec extends EdgeFacts {
  readonly name: string;
  readonly shape: /** Centre `at` from the faces of two walls, square to each. `diameter` as measured, gap comes on top. */
    | { readonly kind: 'circle'; readonly diameter: Ticks; readonly from: readonly [FromWall, FromWall] }
    /** Near corner at the two distances; `along` runs along the first wall, `out` square to it. */
    | {
        readonly kind: 'rectangle';
        readonly along: Ticks;
        readonly out: Ticks;
        readonly from: readonly [FromWall, FromWall];
      }
    /** Points, each as distances from the same two walls. */
    | {
        readonly kind: 'polygon';
        readonly walls: readonly [string, string];
        readonly points: readonly Point[];
        /** How far the middle of the side that leads on from each point stands off it, out of the obstacle; 0 where it is straight. */
        readonly rises?: readonly Ticks[];
      };
}

export interface FromWall {
  readonly wall: string;
  readonly distance: Ticks;
}

export type PatternName =
  | 'straight'
  | 'running'
  | 'herringbone'
  | 'basketweave'
  | 'twoSquares'
  | 'windmill'
  | 'threeSizes'
  | 'fourSizes'
  | 'hexagon'
  | 'octagonAndDot'
  | 'rhombus'
  | 'chevron'
  | 'pennyRound'
  | 'own';

export interface PatternSpec {
  readonly name: PatternName;
  /** Key of the tile; the first one where there are several. */
  readonly tile: string;
  /** Keys of all tiles of a pattern of several, in the pattern's own order. */
  readonly tiles?: readonly string[];
  /** Running bond: shift of each course as a fraction of the module, in lowest terms, or a length. */
  readonly offset?: { readonly numerator: number; readonly denominator: number } | { readonly length: Ticks };
  /** Courses step the same way each time, or go back and forth. */
  readonly stepping?: 'stepping' | 'alternating';
  /** Tiles that lie side by side as one: herringbone 1 or 2, basketweave 2 and more. */
  readonly group?: number;
  /** Tiles of two colours that alternate in the place of the first tile. */
  readonly checker?: readonly [string, string];
  readonly own?: OwnRepeat;
  /** Angle in degrees of the tile's length, counter-clockwise from the wall `along`. */
  readonly turnedDeg: number;
  /** What the pattern is square to: a wall by its name, the first one unless said, or a line of its own. */
  readonly along: PatternAlong;
}

/** A wall by its name, or a line of its own. */
export type PatternAlong = string | PatternLine;

/** A line that a pattern follows in place of a wall. */
export type PatternLine =
  /** The direction that shares the taper among the walls in sight, near that of a wall; those shorter than `least` do not count. */
  | { readonly kind: 'shared'; readonly near: string; readonly least: Ticks; readonly focalWeight: number }
  /** From place to place: a corner, or the middle of a wall, a doorway or an obstacle, by name. */
  | { readonly kind: 'sight'; readonly from: string; readonly to: string };

/** A width that is to be worked out: along two walls that face each other, or wherever walls do so over the greatest length. */
export type OpenWidth = 'solve' | { readonly between: readonly [string, string] };

/** One course of a border: a tile whose length runs along the wall. */
export interface BorderCourse {
  readonly tile: string;
  /** What of the tile's width it takes, the factory edge to the field; open: so that the field ends clean. */
  readonly width: Ticks | OpenWidth;
  readonly corners: 'mitred' | 'butted';
  /** Of butted corners, the end at which each side runs through as you face its wall from the room; the right unless told. */
  readonly through?: 'left' | 'right';
}

/** A rectangle in the field, such as a rug before a door: near corner at the distances from two walls. */
export interface InlaySpec {
  readonly name: string;
  /** Along the first wall, and square to it, tile to tile: a joint runs round it. */
  readonly along: Ticks;
  readonly out: Ticks;
  readonly from: readonly [FromWall, FromWall];
  /** Square to the first of the two walls unless said. */
  readonly pattern: PatternSpec;
  /** Courses round it, from its edge inwards. */
  readonly border?: readonly (BorderCourse & { readonly width: Ticks })[];
}

/** A pattern of the owner's own, counted in modules of its smallest side with one joint. */
export interface OwnRepeat {
  readonly repeat: readonly [Point, Point];
  readonly places: readonly {
    readonly tile: string;
    /** Lower left corner of the tile. */
    readonly at: Point;
    /** Its longer side stands upright. */
    readonly stands: boolean;
  }[];
}

/** Where the pattern starts on both axes, and what the search for it goes by. */
export interface StartSpec {
  readonly along: StartWish;
  readonly across: StartWish;
  /** What one figure may be worse by for the sake of the next; the trade's where missing. */
  readonly tolerance?: StartTolerance;
  /** By how much the joint may be wider or narrower to be rid of strips in sight; 0 unless told. */
  readonly easeJoint?: Ticks;
}

/** Where the pattern starts on one axis of its own frame. Edge names are walls, doorways (their door line) or obstacles. */
export type StartWish =
  | { readonly kind: 'best' }
  /** `what` free: joint or tile, whichever leaves the larger cuts. */
  | {
      readonly kind: 'centred';
      readonly between: readonly [string, string];
      readonly what?: 'joint' | 'tile';
    }
  /** The middle of a joint on the line of that edge. */
  | { readonly kind: 'joint'; readonly on: string }
  /** A whole tile against that edge, at its gap. */
  | { readonly kind: 'tile'; readonly on: string }
  /** The piece against that edge is `size` wide. */
  | { readonly kind: 'cut'; readonly size: Ticks; readonly at: string };

export type ZoneWish =
  | { readonly kind: 'auto' }
  | { readonly kind: 'count'; readonly count: number }
  /** Split along the joint nearest to each of these distances from a wall. */
  | { readonly kind: 'splits'; readonly from: string; readonly at: readonly Ticks[] };

export interface BaseSpec {
  /** Key of a trade material, such as `boards`, `plywood`, `concrete`. */
  readonly below: string;
  readonly removed: readonly Layer[];
  readonly kept: readonly Layer[];
  readonly fresh: readonly Layer[];
  readonly heights: readonly HeightSpec[];
  /** What the base was read on, flatness, film and moisture: a layer or the bare base. Missing where nothing comes up. */
  readonly readOn?: string;
  readonly flatness: readonly { readonly gap: Ticks; readonly under: Ticks; readonly where?: string }[];
  /** Cracks by where they are; `line` where the job tells it from two walls. */
  readonly cracks: readonly { readonly where: string; readonly moving: boolean; readonly line?: BasePlace }[];
  /** Distances of base joints from a wall. */
  readonly joints: readonly FromWall[];
  readonly heated: boolean;
  /** What must come out and go back: `toilet`, `vanity`, `doors`, `base`, `carpet`. */
  readonly comesOut: readonly { readonly what: string; readonly who?: string }[];
  /** Spots that sound hollow, by where they are; `across` is their width. */
  readonly hollow?: readonly { readonly where: string; readonly across?: Ticks; readonly at?: BasePlace }[];
  /** Where nails or tack strip left holes. */
  readonly nailHoles?: string;
  /** Paint or curing film on the base, and what a drop of water does on it. */
  readonly film?: {
    readonly kind: 'none' | 'paint' | 'curing';
    readonly drop?: 'soaks in' | 'stays';
  };
  readonly moisture?: {
    readonly reads: MoistureReading;
    readonly on?: string;
    /** Most that the mortar's sheet allows. */
    readonly limit?: MoistureReading;
  };
  /** Flatness readings on a grid. */
  readonly grid?: FlatnessGrid;
  /** Litres that a bag of patch or leveler fills. */
  readonly fillBagLitres?: number;
  /** How long patch or leveler is left alone before the next step, by its own sheet. */
  readonly fillWaitHours?: number;
  /** How long the laboratory takes to answer, from the sample on. */
  readonly laboratoryHours?: number;
}

/** Points on the floor of a surface, each as distances from the same two walls. */
export interface BasePlace {
  readonly surface: string;
  readonly walls: readonly [string, string];
  readonly points: readonly Point[];
}

/** Water in a base: `lb` leaving a slab in pounds per 1000 sq ft and day, `% RH` in the slab, `% CM` of its weight; `% MC` of wood. */
export interface MoistureReading {
  readonly value: number;
  readonly unit: 'lb' | '% RH' | '% CM' | '% MC';
}

/**
 * Heights of the bare base over a datum of its own, read at even steps. Rows run along the first wall, the first row and
 * the first reading of each at the distances `first` from the two walls; null where nothing could be read.
 */
export interface FlatnessGrid {
  readonly surface: string;
  readonly walls: readonly [string, string];
  readonly first: readonly [Ticks, Ticks];
  readonly every: Ticks;
  readonly heights: readonly (readonly (Ticks | null)[])[];
}

export interface Layer {
  readonly name: string;
  readonly thickness: Ticks;
  /** Area that a pack of it covers, by its own sheet, in square metres; of a layer that comes on, where the job says. */
  readonly packM2?: number;
  /** How long it is left alone before the next step, by its own sheet; of a layer that comes on, where the job says. */
  readonly waitHours?: number;
}

/** A height as measured now and on what. */
export interface HeightSpec {
  readonly name: string;
  readonly kind: 'flange' | 'door' | 'floor' | 'appliance' | 'other';
  readonly height: Ticks;
  /** The layer it was measured above: a layer's name or the base. */
  readonly above: string;
  readonly wanted?: Ticks;
}

export interface Products {
  readonly mortar: MortarSpec;
  readonly grout: GroutSpec;
  readonly sealer: SealerSpec;
  readonly sealant: { readonly name?: string; readonly tubeLitres: number };
}

export interface MortarSpec {
  readonly name?: string;
  readonly notch: {
    readonly kind: 'square' | 'v';
    readonly width: Ticks;
    readonly depth: Ticks;
    readonly space: Ticks;
  };
  readonly bagKg: number;
  /** Coverage of one bag, low and high, in square metres; undefined: our table for the notch. */
  readonly coversM2?: readonly [number, number];
  readonly backButter: boolean;
  readonly potLifeHours: number;
  readonly groutAfterHours: number;
  /** Fields that come from the product's own sheet (paths), the rest are our defaults. */
  readonly stated: readonly string[];
}

export interface GroutSpec {
  readonly name?: string;
  readonly kind: 'cement' | 'epoxy';
  readonly bagKg: number;
  readonly colour?: string;
  readonly batch?: string;
  readonly kgPerLitre: number;
  readonly walkHours: number;
  readonly heavyHours: number;
  readonly waterHours: number;
  /** Earliest and latest sealing after grouting, in hours. */
  readonly sealAfterHours: readonly [number, number];
  readonly groutingHours: number;
  readonly stated: readonly string[];
}

export interface SealerSpec {
  readonly name?: string;
  readonly kind: 'penetrating' | 'film' | 'none';
  readonly coversM2PerLitre: number;
  readonly bottleLitres: number;
  readonly cureHours: number;
  /** Who comes to seal, where the job says so. */
  readonly by?: string;
  readonly stated: readonly string[];
}

/** How offcuts are used again. */
export interface Offcuts {
  /** What the plan of tiles keeps small: the tiles, or the pile of offcuts that wait to be used. */
  readonly plan: 'fewestTiles' | 'smallestPile';
  /** A narrower offcut is not kept. */
  readonly narrowest: Ticks;
}

export interface Waste {
  /** Share of the pieces that break, by how they are sawn. */
  readonly breakage: Readonly<Record<SawnAs, number>>;
  /** Pieces kept by the owner: at least this share of all pieces, rounded up to whole tiles. */
  readonly keep: number;
}

export interface Access {
  readonly onlyToilet: boolean;
  readonly onlyExit: boolean;
}

/** What the crew finds on site, in the words of whoever went there. */
export interface Site {
  readonly wayIn?: string;
  readonly water?: string;
  readonly power?: string;
  readonly sawStands?: string;
  readonly wasteGoes?: string;
  readonly photographs?: string;
}
