import {
  drawCheckBars,
  drawKeyPlan,
  drawPlan,
  drawPlanPages,
  drawSwatch,
  type PlanDrawing,
  type PlanOnPages,
  textWidth,
} from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { asSaid } from './asSaid.ts';
import { borderSays } from './borderSays.ts';
import { carriedLines } from './carriedLines.ts';
import { bothSpaces, pageSpace } from './drawingSpace.ts';
import { breakLines, faultLines } from './faultLines.ts';
import { halfTile } from './halfTile.ts';
import { inlaySays } from './inlayLines.ts';
import { mosaicLines } from './mosaicLines.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tileKey } from './tileKey.ts';
import { unnamedOnPlan } from './unnamedOnPlan.ts';
import { wholeAndCut } from './wholeAndCut.ts';

/**
 * Where does every piece go? Each one to scale, named, whole and cut told apart, end cuts outside; below, what the layout
 * itself has to say. Where the names can't be read on one page, an overview comes first, and then parts at a larger scale.
 */
export const layoutPlan: Sheet = {
  name: 'layout-plan',
  for: 'all',
  bundles: ['crew', 'office', 'packet'],
  speaks: 'crew',
  make: (context) => context.packet.surfaces.flatMap((surface, i) => planPages(context, surface, i)),
};

/** The key, a line for names that found no place, and the heading of the faults; then one line a fault, or two. */
const KEY_MM = 24;
/** The line of the key that tells a pattern's tiles apart. */
const TILE_KEY_MM = 6;
const FAULT_MM = 5;
const FAULT_POINTS = 10;
const BULLET_MM = 8;
/** More than this may make the plan small: then the comparison of starts has them all. */
const MOST_FAULTS = 6;
/** The key and the small plan of the pages under a part. */
const KEY_PLAN = { widthMm: 60, heightMm: 30 } as const;
const PART_KEY_MM = 36;

function planPages(context: SheetContext, surface: PacketSurface, i: number): SheetPage[] {
  const { packet, say, units } = context;
  const { paper, step } = packet.spec.print;
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  const options = { id: `plan-${i + 1}`, label, ...units, say, step };
  const tiles = tileKey(context, surface, surface.pieces, String(i + 1)).length > 0 ? TILE_KEY_MM : 0;
  const spaceOver = (lines: readonly string[]) =>
    bothSpaces(paper, KEY_MM + tiles + FAULT_MM * linesHigh(lines, paper));
  const drawn = asSaid(context, surface);
  const planOver = (lines: readonly string[]) => drawPlan(drawn, { ...options, space: spaceOver(lines) });
  const { faults, plan: onePage } = planAndFaults(
    context,
    [
      ...mosaicLines(context, surface),
      ...borderSays(context, surface),
      ...inlaySays(context, surface),
      ...carriedLines(context, surface),
    ],
    { all: faultLines(context, surface, 'all'), breaks: breakLines(context, surface) },
    planOver,
  );
  const pages = drawPlanPages(drawn, onePage, {
    ...options,
    space: bothSpaces(paper, PART_KEY_MM + tiles),
  });
  if (!pages) return [planPage(context, surface, i, onePage, { faults })];
  const overview = drawPlan(drawn, { ...options, space: spaceOver(faults), parts: pages.parts });
  const count = pages.pages.length;
  return [
    planPage(context, surface, i, overview, { faults, count }),
    ...partPages(context, surface, i, pages),
  ];
}

/** How many lines the words take, a bullet before each, in a page's width. */
function linesHigh(lines: readonly string[], paper: 'letter' | 'a4'): number {
  const wide = pageSpace(paper, 'portrait').widthMm - BULLET_MM;
  return lines.reduce((sum, words) => sum + Math.ceil(textWidth(words, FAULT_POINTS) / wide), 0);
}

/**
 * What is always said, and all faults, under the plan where they are few or leave it its scale; else in their place those that may
 * break a piece, and the one line that says where all stand.
 */
function planAndFaults(
  { say }: SheetContext,
  always: readonly string[],
  faults: { readonly all: readonly string[]; readonly breaks: readonly string[] },
  planOver: (lines: readonly string[]) => PlanDrawing,
) {
  const all = [...always, ...faults.all];
  const whole = planOver(all);
  if (faults.all.length <= MOST_FAULTS) return { faults: all, plan: whole };
  const elsewhere = say('sheet.layout-plan.elsewhere', { count: faults.all.length });
  const short = [...always, ...faults.breaks, elsewhere];
  const alone = planOver(short);
  const kept = whole.ratio === alone.ratio && whole.orientation === alone.orientation;
  return kept ? { faults: all, plan: whole } : { faults: short, plan: alone };
}

interface PlanWords {
  readonly faults: readonly string[];
  /** Pages that show parts of it at a larger scale. */
  readonly count?: number;
}

function planPage(
  context: SheetContext,
  surface: PacketSurface,
  i: number,
  drawing: PlanDrawing,
  { faults, count = 0 }: PlanWords,
): SheetPage {
  return {
    floor: surface.name,
    figures: { part: 0, count },
    landscape: drawing.orientation === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      bars: bars(context, `bars-${i + 1}`),
      ...unnamedOnPlan(drawing.unnamed),
      count,
      swatches: swatches(context, surface, String(i + 1)),
      tiles: tileKey(context, surface, surface.pieces, String(i + 1)),
      faults,
      half: halfTile(context, surface),
      ...wholeAndCut(surface),
    },
  };
}

function partPages(
  context: SheetContext,
  surface: PacketSurface,
  i: number,
  { parts, pages }: PlanOnPages,
): SheetPage[] {
  const label = context.say('sheet.layout-plan.key');
  return pages.map(({ part, drawing }) => ({
    floor: surface.name,
    suffix: String(part.number),
    figures: { part: part.number, count: pages.length },
    landscape: parts.orientation === 'landscape',
    scale: `1:${parts.ratio}`,
    data: {
      plan: drawing.svg,
      bars: bars(context, `bars-${i + 1}-${part.number}`),
      ...unnamedOnPlan(drawing.unnamed),
      key: drawKeyPlan(surface, parts, part.number, {
        id: `key-${i + 1}-${part.number}`,
        label,
        space: KEY_PLAN,
      }).svg,
      swatches: swatches(context, surface, `${i + 1}-${part.number}`),
      tiles: tileKey(context, surface, surface.pieces, `${i + 1}-${part.number}`),
    },
  }));
}

/** What each look of a piece means, drawn as on the plan; whole tiles out of sight only where there are any. */
function swatches({ say }: SheetContext, surface: PacketSurface, id: string) {
  const hidden = surface.pieces.some(({ whole, seen }) => whole && seen === 'hidden');
  const looks = (['whole', 'cut', 'hard', 'hidden'] as const).filter((look) => look !== 'hidden' || hidden);
  return looks.map((look) => {
    const name = say(`sheet.layout-plan.${look}`);
    return { look, name, svg: drawSwatch(look, { id: `swatch-${id}-${look}`, label: name }).svg };
  });
}

function bars({ units, say }: SheetContext, id: string): string {
  return drawCheckBars({ id, label: say('drawing.bars'), ...units, say }).svg;
}
