import { isHard } from '../cuts/isHard.ts';
import { drawCheckBars, drawZone, textWidth, type ZoneDrawing } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { drawingSpace, pageSpace } from './drawingSpace.ts';
import { edgeWords } from './edgeWords.ts';
import { type FoundLine, foundLines } from './foundLines.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure, sayFigures } from './sayFigures.ts';
import { tileKey } from './tileKey.ts';
import { unnamedHeight, unnamedPieces } from './unnamedPieces.ts';
import { zoneFactsMm } from './zoneFactsMm.ts';
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

/** Heights in mm of what stands round the plan: a line of ticks; a line of found spaces; the line that tells a pattern's tiles apart. */
const TICKS_MM = 8.2;
const FOUND_MM = 8.2;
/** A line of the words over the found spaces and their type, the heads of their columns, and a line of circled numbers. */
const FOUND_HEAD_MM = 5.5;
const FOUND_POINTS = 10;
const FOUND_KEYS_MM = 6.5;
const CIRCLE_MM = 7.7;
/** How often a plan is drawn anew for what it says of its names. */
const MOST_TRIES = 4;
/** A line that says where names stand. */
const NOTE_MM = 5.5;
/** What the found spaces may take besides. */
const SLACK_MM = 3;
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
  const said = facts(context, surface, zone);
  const { widthMm } = pageSpace(paper, 'portrait');
  const fixed =
    (tiles.length > 0 ? TILE_KEY_MM : 0) +
    zoneFactsMm(context, said, widthMm) +
    tickLines(cuts, widthMm) * TICKS_MM;
  const found = foundLines(context, surface, zone);
  const { drawing, bars, apart, listApart } = planBeside(
    context,
    surface,
    zone,
    fixed,
    foundHeight(context, found),
  );
  return {
    suffix: String(zone.number),
    figures: { zone: zone.number },
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      counted: drawing.counted,
      numbered: drawing.numbered,
      unnamed: unnamedPieces(surface, drawing.unnamed),
      bars: bars
        ? drawCheckBars({ id: `zone-bars-${zone.number}`, label: say('drawing.bars'), ...units, say }).svg
        : '',
      ...said,
      cuts,
      tiles,
      found,
      apart,
      listApart,
    },
  };
}

/** Two lines of found spaces side by side, the higher of both giving the line's height, under the lines that say what they are. */
function foundHeight({ say, second, packet }: SheetContext, found: readonly FoundLine[]): number {
  if (found.length === 0) return 0;
  const { widthMm } = pageSpace(packet.spec.print.paper, 'portrait');
  const words = say('sheet.zone.expected') + (second ? second.say('sheet.zone.expected') : '');
  const head = Math.ceil((textWidth(words, FOUND_POINTS) * 1.1) / widthMm) * FOUND_HEAD_MM;
  const lines = found.flatMap((_, i) => (i % 2 === 0 ? [found.slice(i, i + 2)] : []));
  const high = lines.map((pair) => Math.max(FOUND_MM, ...pair.map(({ deep }) => deep * CIRCLE_MM + 1)));
  return head + FOUND_KEYS_MM + high.reduce((sum, one) => sum + one, 0);
}

/** What stands under the plan on its page: the found spaces, and the pieces it has no room to name. What does not goes to the next page. */
const WAYS = [
  { found: true, list: true },
  { found: false, list: true },
  { found: false, list: false },
] as const;

/** The zone's plan above what stands under it, as much of it as leaves the plan enough of the page. */
function planBeside(
  context: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  fixed: number,
  foundMm: number,
) {
  // A page for a list of names alone is a page too many.
  const ways = WAYS.filter(({ list }) => list || foundMm > 0);
  const drawn = drawnOnce(context, surface, zone);
  const planOf = (way: (typeof WAYS)[number]) => {
    const below = fixed + (way.found && foundMm > 0 ? foundMm + SLACK_MM : 0);
    return { way, ...planOver(context, surface, drawn, { below, list: way.list }) };
  };
  const alone = planOf(ways.at(-1)!);
  const isGood = ({ drawing, heightMm }: Plan) => {
    const small = (drawing.ratio ?? 0) > MOST_SHRUNK * (alone.drawing.ratio ?? 0);
    return !small && !(drawing.counted && !alone.drawing.counted) && heightMm >= LEAST_PLAN_MM;
  };
  const { way, ...plan } = firstOf(ways.slice(0, -1), planOf, isGood) ?? alone;
  return {
    ...plan,
    apart: !way.found && foundMm > 0,
    listApart: !way.list && plan.drawing.unnamed.length > 0,
  };
}

/** The first of what is made of some that is good; of those after it nothing is made. */
function firstOf<T, Made>(
  list: readonly T[],
  make: (one: T) => Made,
  isGood: (made: Made) => boolean,
): Made | undefined {
  for (const one of list) {
    const made = make(one);
    if (isGood(made)) return made;
  }
  return undefined;
}

type Plan = ReturnType<typeof planOn>;

/** The zone's plan over so many mm of other things: what stands there differs from try to try, how high it is often not. */
function drawnOnce(context: SheetContext, surface: PacketSurface, zone: Zone): (below: number) => Plan {
  const known = new Map<number, Plan>();
  return (below) => {
    const plan = known.get(below) ?? planOn(context, surface, zone, below);
    known.set(below, plan);
    return plan;
  };
}

/** What stands under a plan: so many mm of other things, and whether the pieces that it has no room to name are listed there. */
interface Under {
  readonly below: number;
  readonly list: boolean;
}

/** The plan over other things, and over what it says itself of its names. */
function planOver(
  context: SheetContext,
  surface: PacketSurface,
  drawn: (below: number) => Plan,
  { below, list }: Under,
) {
  const said = (plan: Plan) => saidMm(context, surface, plan.drawing, list);
  let [plan, room] = [drawn(below), 0];
  // A smaller plan has room for fewer names still.
  for (let tries = 0; said(plan) > room && tries < MOST_TRIES; tries += 1) {
    room = said(plan);
    plan = drawn(below + room);
  }
  return plan;
}

/** What the plan says of its names, in mm: where they stand where tiles are counted, and which pieces it has no room for. */
function saidMm(
  { packet, say, second }: SheetContext,
  surface: PacketSurface,
  drawing: ZoneDrawing,
  list: boolean,
): number {
  const { widthMm } = pageSpace(packet.spec.print.paper, 'portrait');
  const heading = say('sheet.zone.unnamed') + (second?.say('sheet.zone.unnamed') ?? '');
  const note = [
    ...(drawing.counted ? [say('sheet.zone.names')] : []),
    ...(drawing.numbered ? [say('sheet.zone.numbers')] : []),
  ].join(' ');
  return (
    Math.ceil((textWidth(note, 9) * 1.1) / widthMm) * NOTE_MM +
    (list ? unnamedHeight(unnamedPieces(surface, drawing.unnamed), heading, widthMm) : 0)
  );
}

function planOn({ packet, say, units }: SheetContext, surface: PacketSurface, zone: Zone, below: number) {
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
    mortar: String(sayFigure(context, 'mortarKg', zoneMass(packet, zone))),
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
