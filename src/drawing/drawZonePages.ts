import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import type { DrawOptions, Space } from './Drawing.ts';
import type { ZoneDrawing } from './drawZone.ts';
import { drawZonePart, type ZonePartDrawing } from './drawZonePart.ts';
import { wordsOff } from './matchLines.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import { type Orientation, ratios } from './pickScale.ts';
import { planGrid } from './planGrid.ts';
import { zonePieces } from './zoneMarks.ts';
import { endsOf } from './zoneNames.ts';

/** More pieces than these bear no names on so few pages; small tiles of a large zone are counted in their rows. */
const mostPieces = 250;
/** A plan of which more than this share of the cuts, and as many of them, bear no name and number can't be set from. */
const crowded = { share: 1 / 3, pieces: 13 } as const;
/** Further pages are worth their paper where no more than this share is left of the cuts that bear no name. */
const worth = 0.5;
/** A zone is a day's work: more pages of it than these are not leafed through with wet hands. */
const mostParts = 4;
/** Paper round a part in mm: tight, and wider where names have to be led out, or the words of match lines stand there. */
const borders = [7, 14] as const;

/** The parts of a zone's plan at a larger scale, on the pages they take. */
export interface ZoneOnPages {
  readonly parts: PlanParts;
  readonly pages: readonly { readonly part: PlanPart; readonly drawing: ZonePartDrawing }[];
}

/** A way to use the pages: the room for a part over what stands under it, and whether there is enough room for what the part does not name. */
export interface PageUse {
  /** For a zone in several parts, or for one that takes one page. */
  readonly several: boolean;
  readonly space: Readonly<Record<Orientation, Space>>;
  readonly isTold: (unnamed: readonly string[]) => boolean;
}

type PagesOptions = DrawOptions & { readonly uses: readonly PageUse[] };

/** Whether so many cuts of a zone bear no name that its plan is crowded. */
function isCrowded(aside: number, cuts: number): boolean {
  return aside >= crowded.pieces && aside > crowded.share * cuts;
}

const asideOf = ({ pages }: ZoneOnPages) => pages.reduce((sum, { drawing }) => sum + drawing.aside.length, 0);

/**
 * The plan of a zone in parts at a larger scale, where too many cuts don't bear their name and number on the one drawn on one page. Of the fewest
 * pages on which it is no longer crowded, the largest scale; undefined where one page will do, or more don't help.
 */
export function drawZonePages(
  surface: PacketSurface,
  zone: Zone,
  onePage: ZoneDrawing,
  options: PagesOptions,
): ZoneOnPages | undefined {
  const pieces = zonePieces(surface, zone);
  const cuts = pieces.filter(({ cut }) => cut !== null).length;
  if (pieces.length > mostPieces || !isCrowded(onePage.aside.length, cuts)) return undefined;
  const grids = gridsOf({ ...surface, pieces }, zone, onePage, options);
  let best: ZoneOnPages | undefined;
  for (let count = 1; count <= mostParts; count += 1) {
    const tried = grids
      .filter(({ parts }) => parts.parts.length === count)
      .map(({ parts, use }) => ({ use, on: onPages(surface, zone, parts, options) }))
      .filter(({ use, on }) => on.pages.every(({ drawing }) => use.isTold(drawing.unnamed)));
    for (const { on } of tried) if (!best || asideOf(on) < asideOf(best)) best = on;
    if (best && !isCrowded(asideOf(best), cuts)) return best;
  }
  return best && asideOf(best) <= worth * onePage.aside.length ? best : undefined;
}

/** For each border, use and number of pages the largest scale, among those that are larger than that of the zone's own page. */
function gridsOf(surface: PacketSurface, zone: Zone, onePage: ZoneDrawing, { uses, system }: PagesOptions) {
  const points = surface.pieces.flatMap(({ shape }) => shape.outer);
  const larger = ratios[system].filter((ratio) => ratio < (onePage.ratio ?? 0)).reverse();
  // The ends bear their names on the zone's own page too: no page is needed for them alone.
  const told = new Set(endsOf(zone).filter((id) => !onePage.unnamed.includes(id)));
  const named = surface.pieces.filter(({ id }) => !told.has(id));
  const largestOf = (border: number, use: PageUse) => {
    const largest = new Map<number, PlanParts>();
    for (const ratio of larger) {
      const parts = planGrid(surface, use.space, ratio, border, points, named);
      const count = parts.parts.length;
      if (count > mostParts) break;
      if (count > 1 === use.several) largest.set(count, parts);
    }
    return [...largest.values()].map((parts) => ({ parts, use }));
  };
  const fits = (border: number) => (use: PageUse) => !use.several || border > wordsOff;
  return borders.flatMap((border) => uses.filter(fits(border)).flatMap((use) => largestOf(border, use)));
}

function onPages(surface: PacketSurface, zone: Zone, parts: PlanParts, options: PagesOptions): ZoneOnPages {
  const pages = parts.parts.map((part) => ({
    part,
    drawing: drawZonePart(surface, zone, parts, part, { ...options, id: `${options.id}-${part.number}` }),
  }));
  return { parts, pages };
}
