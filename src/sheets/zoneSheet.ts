import { drawCheckBars, drawZone } from '../drawing/index.ts';
import { sawNearest } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { drawingSpace, pageSpace } from './drawingSpace.ts';
import { edgeWords } from './edgeWords.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What to set in one go: its plan, its cuts to tick, its mortar, the way out, and when it may be walked. Always one page. */
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

/** Heights in mm of what stands round the plan: facts and the rule above the ticks, more of it in two languages; a line of ticks; a line of found spaces. */
const FACTS_MM = { one: 48, two: 55 };
const TICKS_MM = 8.2;
const FOUND_MM = 6.6;
/** More found spaces than this stand in three columns instead of two. */
const MANY_FOUND = 12;
/** A numbered circle with the space after it, and a box, in mm. */
const NUMBER_MM = 11;
const BOX_MM = 6;
const LEAST_PLAN_MM = 85;
/** The upright check bar needs as much; a smaller plan goes without, since the layout plan has both. */
const BARS_MM = 113;

function zonePage(context: SheetContext, surface: PacketSurface, zone: Zone): SheetPage {
  const { packet, say } = context;
  const { system, paper } = packet.spec.print;
  const cuts = zoneCuts(surface, zone);
  const page = pageSpace(paper, 'portrait');
  const fixed = FACTS_MM[context.second ? 'two' : 'one'] + tickLines(cuts, page.widthMm) * TICKS_MM;
  const room = Math.max(0, Math.floor((page.heightMm - fixed - LEAST_PLAN_MM) / FOUND_MM));
  const all = foundSpaces(context, surface, zone);
  const columns = all.length > MANY_FOUND ? 3 : 2;
  const found = all.slice(0, columns * room);
  const below = fixed + Math.ceil(found.length / columns) * FOUND_MM;
  const bars = page.heightMm - below > BARS_MM;
  const drawing = drawZone(surface, zone, {
    id: `zone-${zone.number}`,
    label: say('sheet.zone.drawing', { zone: zone.number }),
    system,
    say,
    space: bars ? drawingSpace(paper, 'portrait', below) : { ...page, heightMm: page.heightMm - below },
  });
  return {
    suffix: String(zone.number),
    figures: { zone: zone.number },
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      bars: bars
        ? drawCheckBars({ id: `zone-bars-${zone.number}`, label: say('drawing.bars'), system, say }).svg
        : '',
      ...facts(context, surface, zone),
      cuts,
      found,
      columns,
    },
  };
}

function facts({ packet, say, time, number }: SheetContext, surface: PacketSurface, zone: Zone) {
  const entry = (code: string) =>
    packet.calendar.find((one) => one.code === code && one.zone === zone.number);
  const set = entry('set');
  const walk = entry('walk') ?? packet.calendar.find((one) => one.code === 'grout');
  const metric = packet.spec.print.system === 'mm';
  return {
    set: set ? time(set.from) : '',
    walk: walk ? time(walk.from) : '',
    first: zone.first,
    last: zone.last,
    wayOut: zone.wayOut ? edgeWords(surface, zone.wayOut, say) : '',
    count: zone.pieces.length,
    mortar: `${number(metric ? zone.mortarKg : zone.mortarKg / 0.45359237, 0)} ${metric ? 'kg' : 'lb'}`,
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
      hard: cut.hard,
    }))
    .filter((cut) => cut.pieces.length > 0);
}

function tickLines(cuts: readonly { readonly pieces: readonly string[] }[], widthMm: number): number {
  const long = cuts.reduce((sum, { pieces }) => sum + NUMBER_MM + BOX_MM * pieces.length, 0);
  return Math.ceil((long * 1.1) / widthMm);
}

/**
 * At each end of a row along the tile: the space that is left from its last whole tile, and the cuts to which a difference
 * goes. Rows that end alike are one line.
 */
function foundSpaces({ packet, say, length }: SheetContext, surface: PacketSurface, zone: Zone) {
  const along = new Set(surface.rows.filter(({ axis }) => axis === 'along').map(({ id }) => id));
  const lines = zone.found
    .filter(({ row }) => along.has(row))
    .map(({ row, edge, expected, cuts }) => ({
      row,
      edge: shortEdge(surface, edge ?? '', say),
      space: length(sawNearest(expected, packet.rounding.step)),
      cuts,
    }));
  const alike = new Map<string, typeof lines>();
  for (const line of lines) {
    const key = [line.edge, line.space, ...line.cuts].join('|');
    alike.set(key, [...(alike.get(key) ?? []), line]);
  }
  return [...alike.values()].map((group) => ({ ...group[0]!, row: rowNames(group.map(({ row }) => row)) }));
}

/** Up to two names, or the first and the last. */
function rowNames(names: readonly string[]): string {
  return names.length > 2 ? `${names[0]} … ${names.at(-1)}` : names.join(', ');
}

/** In a narrow column the bare name of what stands there; which of its faces is meant shows in the plan. */
function shortEdge(surface: PacketSurface, id: string, say: SheetContext['say']): string {
  const name = id.split(':')[0]!;
  const known = [...surface.obstacles, ...surface.openings].some((one) => one.name === name);
  return known ? name : edgeWords(surface, id, say);
}
