import type { PacketSurface } from '../packet/Packet.ts';
import type { Space } from './Drawing.ts';
import type { PlanDrawing, PlanOptions } from './drawPlan.ts';
import { drawPlanPart, type PlanPartDrawing } from './drawPlanPart.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import { type Orientation, ratios } from './pickScale.ts';
import { planGrid } from './planGrid.ts';
import { scaleFor } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';
import { tooSmallForNames } from './tooSmallForNames.ts';

/** As many names as fit one line under the plan may be left to it; a page with more can't be read. */
const mostUnnamed = 6;
/** Nobody lays out more pages than this. */
const mostParts = 16;
/** Paper round a part in mm: tight, and wider where names have to be led out. */
const borders = [14, 22] as const;

/** A plan on the pages it takes. */
export interface PlanOnPages {
  readonly parts: PlanParts;
  readonly pages: readonly { readonly part: PlanPart; readonly drawing: PlanPartDrawing }[];
}

/** What is drawn, without the id that each page has for itself. */
type PartsOptions = Omit<PlanOptions, 'space'> & { readonly space: Readonly<Record<Orientation, Space>> };

function isLegible({ unnamed, counted }: { unnamed: readonly string[]; counted: boolean }): boolean {
  return !counted && unnamed.length <= mostUnnamed;
}

/** The parts drawn; undefined as soon as one of them can't be read, as drawing all of a large floor takes long. */
function legiblePages(
  surface: PacketSurface,
  options: PartsOptions,
  parts: PlanParts,
): PlanOnPages | undefined {
  const pages: PlanOnPages['pages'][number][] = [];
  for (const part of parts.parts) {
    const id = `${options.id}-${part.number}`;
    const drawing = drawPlanPart(surface, parts, part, { ...options, id });
    if (!isLegible(drawing)) return undefined;
    pages.push({ part, drawing });
  }
  return { parts, pages };
}

/**
 * A plan in parts, where the one drawn on one page can't be read: where more names than a line holds find no place on it.
 * The smallest scale of the stated list at which every page can be read; undefined where one page does, or where no
 * scale is legible on as many pages as can be handled.
 */
export function drawPlanPages(
  surface: PacketSurface,
  onePage: PlanDrawing,
  options: PartsOptions,
): PlanOnPages | undefined {
  if (isLegible(onePage)) return undefined;
  const at = (ratio: number) => scaleFor(surfacePoints(surface), surface.turn, ratio, [0, 0]);
  const larger = ratios[options.system]
    .filter((ratio) => ratio < (onePage.ratio ?? 0) && !tooSmallForNames(surface.pieces, at(ratio)))
    .reverse();
  for (const ratio of larger) {
    const grids = borders
      .map((border) => planGrid(surface, options.space, ratio, border))
      .filter(({ parts }) => parts.length >= 2 && parts.length <= mostParts);
    const fewest = Math.min(...grids.map(({ parts }) => parts.length));
    // Of two borders one with more pages need not be drawn: the next scale is tried instead.
    const legible = grids
      .filter(({ parts }) => parts.length === fewest)
      .flatMap((parts) => legiblePages(surface, options, parts) ?? []);
    const best = fewestUnnamed(legible);
    if (best) return best;
  }
  return undefined;
}

function fewestUnnamed(tried: readonly PlanOnPages[]): PlanOnPages | undefined {
  const unnamed = ({ pages }: PlanOnPages) =>
    pages.reduce((sum, { drawing }) => sum + drawing.unnamed.length, 0);
  return [...tried].sort((a, b) => unnamed(a) - unnamed(b))[0];
}
