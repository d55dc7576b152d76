import type { Cut } from '../cuts/Cut.ts';
import type { System } from '../measure/index.ts';
import { breakMarks, gapShape } from './breakMarks.ts';
import { cardDetail } from './cardDetail.ts';
import { arcMarks, drillMarks, edgeMarks, ghost, keptShape, wasteCrosses } from './cardMarks.ts';
import { sizeMarks } from './cardSizes.ts';
import { type CardTurn, type TileSides, tileRing, wallDownTurn } from './cutFrame.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import { trimmed } from './markBounds.ts';
import { penSvg, wholePixels } from './penSvg.ts';
import { pickRatio, ratios } from './pickScale.ts';
import { mmPerTick, scaleFor } from './Scale.ts';
import { type Shortened, shortened } from './shortened.ts';

/** What a card leaves for the tile itself between its sizes, in mm. */
const tileSpace = { widthMm: 30, heightMm: 30 };

/**
 * The one scale for all cards of a sheet, such that every tile fits a card whichever way it lies.
 *
 * @example cardScale([{ length: 96012, width: 96012 }], 'inches') //=> 12
 */
export function cardScale(tiles: readonly TileSides[], system: System): number {
  const side = Math.max(...tiles.map(({ length, width }) => Math.max(length, width)));
  return pickRatio({ width: side, height: side }, tileSpace, system) ?? ratios[system].at(-1)!;
}

/** How large a card shows its cut, and how it is turned. */
export interface CardOptions extends DrawOptions {
  readonly ratio: number;
  /** The wall's side at the foot unless told otherwise. */
  readonly turn?: CardTurn;
  /** Whether a plank is drawn shorter than it is, with break lines. */
  readonly broken?: boolean;
}

/** What stays at each end of a length that is left out, the gap between its break lines, and the least that is worth leaving out, in mm of paper. */
const staysMm = { end: 5, gap: 2.5, least: 8 } as const;

/** A cut with its tile as a card shows them, and where they are broken. */
interface Shown {
  readonly cut: Cut;
  readonly tile: TileSides;
  readonly gap?: Shortened['gap'];
}

/** The cut drawn shorter at a scale; undefined where that gains nothing. */
function brokenAt(cut: Cut, tile: TileSides, ratio: number): Shortened | undefined {
  const ticks = (mm: number) => Math.round(mm / mmPerTick(ratio));
  const { end, gap, least } = staysMm;
  return shortened(cut, tile, { end: ticks(end), gap: ticks(gap), least: ticks(least) });
}

const asShown = (
  cut: Cut,
  tile: TileSides,
  { ratio, broken }: Pick<CardOptions, 'ratio' | 'broken'>,
): Shown => (broken ? brokenAt(cut, tile, ratio) : undefined) ?? { cut, tile };

/** Whether a card at a scale can show its cut shorter than it is. */
export function canBreak(cut: Cut, tile: TileSides, ratio: number): boolean {
  return brokenAt(cut, tile, ratio) !== undefined;
}

/** What a card takes at least at a scale: its tile, whatever stands round it. */
export function leastCard(
  cut: Cut,
  tile: TileSides,
  { turn = wallDownTurn(cut), ...options }: Pick<CardOptions, 'ratio' | 'turn' | 'broken'>,
): Space {
  const shown = asShown(cut, tile, options).tile;
  const alone = trimmed([ghost(shown, scaleFor(tileRing(shown), turn, options.ratio, [0, 0]))]);
  return { widthMm: wholePixels(alone.widthMm), heightMm: wholePixels(alone.heightMm) };
}

/**
 * A hard cut, face up, turned as it is told: the whole tile dashed, the piece with heavy factory edges and thin
 * sawn ones, waste crossed out, up to eight sizes outside, dots where to drill first, circles as true arcs. What is too
 * small to be seen so is shown larger beside it. A plank may be drawn shorter between break lines, its sizes as they are.
 */
export function drawCard(whole: Cut, wholeTile: TileSides, options: CardOptions): Drawing {
  const { cut, tile, gap } = asShown(whole, wholeTile, options);
  const scale = scaleFor(tileRing(tile), options.turn ?? wallDownTurn(cut), options.ratio, [0, 0]);
  const drawn = [
    ghost(tile, scale),
    keptShape(cut, scale),
    ...wasteCrosses(cut, tile, scale, gap && [gapShape({ gap }, tile)]),
    ...edgeMarks(cut, scale),
    ...(gap ? breakMarks({ gap, tile }, scale) : []),
    ...arcMarks(cut, scale),
    ...drillMarks(cut, scale),
    ...sizeMarks(cut, tile, scale, options),
  ];
  const { marks, widthMm, heightMm } = trimmed([...drawn, ...cardDetail(cut, scale, drawn, options.system)]);
  return penSvg(marks, { id: options.id, label: options.label, widthMm, heightMm, ratio: options.ratio });
}
