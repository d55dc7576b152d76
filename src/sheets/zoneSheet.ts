import { isHard } from '../cuts/isHard.ts';
import { drawCheckBars, drawZone } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { drawingSpace, pageSpace } from './drawingSpace.ts';
import { edgeWords } from './edgeWords.ts';
import { foundLines } from './foundLines.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure, sayFigures } from './sayFigures.ts';
import { tileKey } from './tileKey.ts';
import { zoneMass } from './zoneMass.ts';

/** What to set in one go: its plan, its cuts to tick, its mortar, the way out, when it may be walked, and each row's space at the wall, expected and found. */
export const zoneSheet: Sheet = {
  name: 'zone',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) =>
    context.packet.surfaces.flatMap((surface) =>
      surface.zones.map((zone) => zonePage(context, surface, zone)),
    ),
};

/** Heights in mm of what stands round the plan: facts and the rule above the ticks, more of it in two languages; a line of ticks; a line of found spaces; the line that tells a pattern's tiles apart. */
const FACTS_MM = { one: 49, two: 67 };
const TICKS_MM = 8.2;
const FOUND_MM = 8.2;
/** What found spaces of several lines, and the line that says where names stand, may take besides. */
const SLACK_MM = 8;
const TILE_KEY_MM = 7;
/** A numbered circle with the space after it, and a box, in mm. */
const NUMBER_MM = 11;
const BOX_MM = 6;
/** Found spaces have a page of their own where they would leave the plan less height than this, make it so many times smaller, or keep its names from being read. */
const LEAST_PLAN_MM = 50;
const MOST_SHRUNK = 1.4;
/** The upright check bar needs as much; a smaller plan goes without, since the layout plan has both. */
const BARS_MM = 113;

function zonePage(context: SheetContext, surface: PacketSurface, zone: Zone): SheetPage {
  const { packet, say, units } = context;
  const { paper } = packet.spec.print;
  const cuts = zoneCuts(surface, zone);
  const own = new Set(zone.pieces);
  const pieces = surface.pieces.filter(({ id }) => own.has(id));
  const tiles = tileKey(context, surface, pieces, `zone-${zone.number}`);
  const fixed =
    (tiles.length > 0 ? TILE_KEY_MM : 0) +
    FACTS_MM[context.second ? 'two' : 'one'] +
    tickLines(cuts, pageSpace(paper, 'portrait').widthMm) * TICKS_MM;
  const found = foundLines(context, surface, zone);
  const { drawing, bars, apart } = planBeside(context, surface, zone, fixed, foundHeight(found.length));
  return {
    suffix: String(zone.number),
    figures: { zone: zone.number },
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      counted: drawing.counted,
      numbered: drawing.numbered,
      bars: bars
        ? drawCheckBars({ id: `zone-bars-${zone.number}`, label: say('drawing.bars'), ...units, say }).svg
        : '',
      ...facts(context, surface, zone),
      cuts,
      tiles,
      found,
      apart,
    },
  };
}

/** Two lines of found spaces side by side under the line that says what they are. */
function foundHeight(count: number): number {
  return count === 0 ? 0 : (1 + Math.ceil(count / 2)) * FOUND_MM;
}

/** The zone's plan above what stands under it, and whether the found spaces leave it enough of the page. */
function planBeside(
  context: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  fixed: number,
  foundMm: number,
) {
  const beside = planOver(context, surface, zone, fixed + foundMm + SLACK_MM);
  const alone = planOver(context, surface, zone, fixed);
  const small = (beside.drawing.ratio ?? 0) > MOST_SHRUNK * (alone.drawing.ratio ?? 0);
  const unnamed = beside.drawing.counted && !alone.drawing.counted;
  return small || unnamed || beside.heightMm < LEAST_PLAN_MM
    ? { ...alone, apart: foundMm > 0 }
    : { ...beside, apart: false };
}

function planOver({ packet, say, units }: SheetContext, surface: PacketSurface, zone: Zone, below: number) {
  const { paper } = packet.spec.print;
  const page = pageSpace(paper, 'portrait');
  const heightMm = page.heightMm - below;
  const bars = heightMm > BARS_MM;
  const drawing = drawZone(surface, zone, {
    id: `zone-${zone.number}`,
    label: say('sheet.zone.drawing', { zone: zone.number }),
    ...units,
    say,
    space: bars
      ? drawingSpace(paper, 'portrait', below)
      : { ...page, heightMm: Math.max(LEAST_PLAN_MM, heightMm) },
  });
  return { drawing, bars, heightMm };
}

function facts(context: SheetContext, surface: PacketSurface, zone: Zone) {
  const { packet, say, time } = context;
  const set = packet.calendar.find(({ code, zone: of }) => code === 'set' && of === zone.number);
  return {
    set: set ? time(set.from) : '',
    walks: walksOn(context),
    first: zone.first,
    last: zone.last,
    wayOut: zone.wayOut ? edgeWords(surface, zone.wayOut, say) : '',
    count: zone.pieces.length,
    ...mortarFacts(context, zone),
  };
}

/** Who may walk on the tile from when: the setter as soon as the next work on it begins, all others as the calendar and the door say. */
function walksOn({ packet: { calendar }, say, time }: SheetContext) {
  const work = calendar.find(({ code }) => code === 'sealTile' || code === 'grout');
  const walk = calendar.findLast(({ code }) => code === 'walk');
  return [
    ...(work ? [{ who: say('sheet.zone.walkSetter', { first: work.code }), from: time(work.from) }] : []),
    ...(walk ? [{ who: say('sheet.zone.walkOthers'), from: time(walk.from) }] : []),
  ];
}

/** Powder for the zone, the rate it goes by with the trowel that leaves it, and the batches. */
function mortarFacts(context: SheetContext, zone: Zone) {
  const { packet, say } = context;
  const { notch } = packet.spec.products.mortar;
  const figures = sayFigures(context, { notchWidth: notch.width, notchDepth: notch.depth });
  return {
    mortar: sayFigure(context, 'mortarKg', zoneMass(packet, zone)),
    rate: zone.mortarBy ? say('sheet.zone.rate', { by: zone.mortarBy, kind: notch.kind, ...figures }) : '',
    batches: zone.batches,
  };
}

/** The zone's cuts by number, with a box for each piece. */
function zoneCuts(surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  return surface.cuts
    .map((cut) => ({
      number: cut.number,
      pieces: cut.pieces.filter((piece) => inZone.has(piece)),
      hard: isHard(cut),
    }))
    .filter((cut) => cut.pieces.length > 0);
}

function tickLines(cuts: readonly { readonly pieces: readonly string[] }[], widthMm: number): number {
  const long = cuts.reduce((sum, { pieces }) => sum + NUMBER_MM + BOX_MM * pieces.length, 0);
  return Math.ceil((long * 1.1) / widthMm);
}
