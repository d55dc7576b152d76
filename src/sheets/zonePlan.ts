import { drawZone, type Orientation, textWidth, type ZoneDrawing, zoneRatio } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { drawingSpace, pageSpace } from './drawingSpace.ts';
import type { FoundLine } from './foundLines.ts';
import { foundMm, foundPages } from './foundPages.ts';
import type { SheetContext } from './SheetContext.ts';
import { unnamedHeight, unnamedPieces } from './unnamedPieces.ts';
import { zoneId } from './zoneId.ts';

/** What stands under the plan of a zone: the height of what always does, in mm for a page so wide, and the spaces to be found. */
export interface UnderPlan {
  readonly fixedMm: (widthMm: number) => number;
  readonly found: readonly FoundLine[];
}

/** Found spaces that stand together, under the plan or what is there already, or apart from it on a page of their own. */
export interface FoundPart {
  readonly apart: boolean;
  readonly lines: readonly FoundLine[];
}

/** The plan, the way its page lies, whether check bars stand beside it, and what goes to further pages. */
export interface ZonePlan {
  readonly drawing: ZoneDrawing;
  readonly way: Orientation;
  readonly bars: boolean;
  readonly apart: boolean;
  readonly listApart: boolean;
  readonly factsApart: boolean;
  readonly parts: readonly FoundPart[];
}

/** How often a plan is drawn anew for what it says of its names. */
const MOST_TRIES = 4;
/** A line that says where names stand. */
const NOTE_MM = 5.5;
/** What the found spaces may take besides. */
const SLACK_MM = 3;
/** Found spaces have a page of their own where they would leave the plan less height than this, make it so many times smaller, or keep its names from being read. */
const LEAST_PLAN_MM = 50;
const MOST_SHRUNK = 1.4;
/** Found spaces that take less of a page of their own than this have what else stands under the plan with them there. */
const FEW_MM = 45;
/** As much is enough where the names stand on further pages. */
const LEAST_OVERVIEW_MM = 60;
/** The upright check bar needs as much; a smaller plan goes without, since the layout plan has both. */
const BARS_MM = 113;

/** A zone with the words and the page it is drawn for. */
interface OnPage {
  readonly context: SheetContext;
  readonly surface: PacketSurface;
  readonly zone: Zone;
  readonly way: Orientation;
  /** Whether the cuts bear their names on further pages, at a larger scale: then this one needs not name them all. */
  readonly closer: boolean;
}

const spaceOf = ({ context, way }: OnPage) => pageSpace(context.packet.spec.print.paper, way);

/** What stands under the plan on its page: the found spaces, and the pieces it has no room to name. What does not goes to the next page. */
const WAYS = [
  { found: true, list: true },
  { found: false, list: true },
  { found: false, list: false },
] as const;

/**
 * The zone's plan above what stands under it, as much of it as leaves the plan enough of the page. The page lies, and the plan of a room that
 * is high and narrow on it with its first wall upright, where that draws it clearly larger.
 */
export function zonePlan(
  context: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  under: UnderPlan & { readonly closer: boolean },
): ZonePlan {
  const on = { context, zone, closer: under.closer };
  const upright = planBeside({ ...on, surface, way: 'portrait' }, under);
  const isClearlyLarger = (ratio: number) => (upright.drawing.ratio ?? 0) >= MOST_SHRUNK * ratio;
  const lying = [surface, { ...surface, turn: surface.turn + 90 }]
    .map((turned): OnPage => ({ ...on, surface: turned, way: 'landscape' }))
    .filter((page) => isClearlyLarger(lyingRatio(page, under)))
    .map((page) => planBeside(page, under))
    .filter(({ apart }) => !under.closer || !apart || upright.apart)
    .find(({ drawing }) => isClearlyLarger(drawing.ratio ?? Infinity));
  return lying ?? upright;
}

/** The scale that a plan would have over no more than what always stands under it. */
function lyingRatio({ context, surface, zone, way }: OnPage, { fixedMm }: UnderPlan): number {
  const { say, units, packet } = context;
  const page = pageSpace(packet.spec.print.paper, way);
  const space = { ...page, heightMm: page.heightMm - fixedMm(page.widthMm) };
  return zoneRatio(surface, zone, { id: '', label: '', ...units, say, space });
}

function planBeside(on: OnPage, { fixedMm, found }: UnderPlan): ZonePlan {
  const { widthMm } = spaceOf(on);
  const [fixed, high] = [fixedMm(widthMm), foundMm(on.context, found, widthMm)];
  // A page for a list of names alone is a page too many.
  const ways = WAYS.filter(({ list }) => list || high > 0);
  const drawn = drawnOnce(on);
  const planUnder = (under: (typeof WAYS)[number]) => {
    const below = fixed + (under.found && high > 0 ? high + SLACK_MM : 0);
    return { under, ...planOver(on, drawn, { below, list: under.list }) };
  };
  const alone = planUnder(ways.at(-1)!);
  const isGood = ({ drawing, heightMm }: Plan) => {
    if (on.closer) return heightMm >= LEAST_OVERVIEW_MM;
    const small = (drawing.ratio ?? 0) > MOST_SHRUNK * (alone.drawing.ratio ?? 0);
    return !small && !(drawing.counted && !alone.drawing.counted) && heightMm >= LEAST_PLAN_MM;
  };
  const { under, ...plan } = firstOf(ways.slice(0, -1), planUnder, isGood) ?? alone;
  const apart = !under.found && high > 0;
  const factsApart = apart && high < FEW_MM;
  const { drawing, bars } = factsApart ? planOver(on, drawn, { below: 0, list: under.list }) : plan;
  const listApart = !under.list && !on.closer && drawing.unnamed.length > 0;
  const takenMm = (listApart ? listMm(on, drawing) : 0) + (factsApart ? fixed : 0);
  const parts = partsOf(on, { found, apart, takenMm });
  return { drawing, way: on.way, bars, apart, listApart, factsApart, parts };
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
function drawnOnce(on: OnPage): (below: number) => Plan {
  const known = new Map<number, Plan>();
  return (below) => {
    const plan = known.get(below) ?? planOn(on, below);
    known.set(below, plan);
    return plan;
  };
}

/** Found spaces under the plan, under what has the next page already, or in as many parts as they take pages. */
function partsOf(
  on: OnPage,
  {
    found,
    apart,
    takenMm,
  }: { readonly found: readonly FoundLine[]; readonly apart: boolean; readonly takenMm: number },
): readonly FoundPart[] {
  if (found.length === 0) return [];
  if (!apart) return [{ apart: false, lines: found }];
  const { widthMm, heightMm } = spaceOf(on);
  return foundPages(on.context, found, { widthMm, heightMm, takenMm: takenMm % heightMm })
    .map((lines, i) => ({ apart: i > 0 || takenMm === 0, lines }))
    .filter(({ lines }) => lines.length > 0);
}

/** What stands under a plan: so many mm of other things, and whether the pieces that it has no room to name are listed there. */
interface Under {
  readonly below: number;
  readonly list: boolean;
}

/** The plan over other things, and over what it says itself of its names. */
function planOver(on: OnPage, drawn: (below: number) => Plan, { below, list }: Under) {
  const said = (plan: Plan) => saidMm(on, plan.drawing, list);
  let [plan, room] = [drawn(below), 0];
  // A smaller plan has room for fewer names still.
  for (let tries = 0; said(plan) > room && tries < MOST_TRIES; tries += 1) {
    room = said(plan);
    plan = drawn(below + room);
  }
  return plan;
}

/** The list of the pieces that a plan has no room to name, in mm. */
function listMm(on: OnPage, drawing: ZoneDrawing): number {
  const { say, second } = on.context;
  const heading = say('sheet.zone.unnamed') + (second?.say('sheet.zone.unnamed') ?? '');
  return unnamedHeight(unnamedPieces(on.surface, drawing.unnamed), heading, spaceOf(on).widthMm);
}

/** What the plan says of its names, in mm: where they stand where tiles are counted, and which pieces it has no room for. */
function saidMm(on: OnPage, drawing: ZoneDrawing, list: boolean): number {
  const { say } = on.context;
  const note = [
    ...(on.closer ? [say('sheet.zone.closer', { count: 1 })] : []),
    ...(drawing.counted ? [say('sheet.zone.names')] : []),
    ...(drawing.numbered ? [say('sheet.zone.numbers')] : []),
  ].join(' ');
  const lines = Math.ceil((textWidth(note, 9) * 1.1) / spaceOf(on).widthMm);
  return lines * NOTE_MM + (list && !on.closer ? listMm(on, drawing) : 0);
}

function planOn(on: OnPage, below: number) {
  const { context, surface, zone, way } = on;
  const { packet, say, units } = context;
  const page = spaceOf(on);
  const heightMm = page.heightMm - below;
  const bars = heightMm > BARS_MM;
  const drawing = drawZone(surface, zone, {
    id: zoneId(packet, surface, zone),
    label: say('sheet.zone.drawing', { zone: zone.number }),
    ...units,
    say,
    names: on.closer ? 'ends' : 'all',
    space: bars
      ? drawingSpace(packet.spec.print.paper, way, below)
      : { ...page, heightMm: Math.max(LEAST_PLAN_MM, heightMm) },
  });
  return { drawing, bars, heightMm };
}
