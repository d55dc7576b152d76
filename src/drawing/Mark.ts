import type { Fill } from './hatches.ts';
import type { LineName } from './lineStyles.ts';

/** A place on the drawing in millimetres of paper, from its lower left corner, y up. */
export type Spot = readonly [x: number, y: number];

/** What a drawing is made of: plain data, every length in millimetres of paper, angles in radians counter-clockwise. */
export type Mark = PathMark | AreaMark | CircleMark | TextMark | FigureMark;

/** An open line through spots. */
export interface PathMark {
  readonly mark: 'path';
  readonly steps: readonly Step[];
  readonly line: LineName;
}

/** Closed rings, the inner ones cut out of the outer ones. */
export interface AreaMark {
  readonly mark: 'area';
  readonly rings: readonly (readonly Step[])[];
  readonly line?: LineName;
  readonly fill?: Fill;
  /** Whether its white ground lies over lines too; default no. */
  readonly over?: boolean;
}

export interface CircleMark {
  readonly mark: 'circle';
  readonly centre: Spot;
  readonly radius: number;
  readonly line?: LineName;
  readonly fill?: Fill;
}

/** A corner to go straight to, or an arc to run along; an arc starts where the line stands. */
export type Step =
  | Spot
  | { readonly centre: Spot; readonly radius: number; readonly from: number; readonly to: number };

/** One line of words, centred in height on `at`. */
export interface TextMark {
  readonly mark: 'text';
  readonly at: Spot;
  readonly text: string;
  /** Type size in points. */
  readonly size: number;
  readonly weight: 400 | 700;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees, counter-clockwise; 0 reads from the left, 90 from below. */
  readonly turn: 0 | 90;
  /** What keeps 1 mm off the words: hatches, lines too, or nothing. */
  readonly clear: 'hatch' | 'all' | 'none';
  /** Figures as wide as they need instead of all alike, where a name has to fit. */
  readonly narrow?: boolean;
}

/** A size in the large type of the saw: whole inches, then a raised numerator, a slash and a denominator. */
export interface FigureMark {
  readonly mark: 'figure';
  readonly at: Spot;
  readonly whole: string;
  readonly numerator?: string;
  readonly denominator?: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: 0 | 90;
  /** Points of the whole number and of each numeral of the fraction. */
  readonly sizes: readonly [whole: number, fraction: number];
}
