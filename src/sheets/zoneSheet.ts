import { isHard } from '../cuts/isHard.ts';
import { drawCheckBars } from '../drawing/index.ts';
import { orderedBed } from '../materials/orderedBed.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { closerPages } from './closerPages.ts';
import { deeperNotch } from './deeperNotch.ts';
import { edgeWords } from './edgeWords.ts';
import { foundFigures, foundLines } from './foundLines.ts';
import { isLaid } from './isLaid.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure, sayFigures } from './sayFigures.ts';
import { tileKey } from './tileKey.ts';
import { uncheckedCuts } from './uncheckedCuts.ts';
import { unnamedPieces } from './unnamedPieces.ts';
import { zoneFactsMm } from './zoneFactsMm.ts';
import { zoneId } from './zoneId.ts';
import { zoneMass } from './zoneMass.ts';
import { type ZonePlan, zonePlan } from './zonePlan.ts';

/** What to set in one go: its plan, its cuts to tick, its mortar, the way out, when it may be walked, and each row's space at the wall, expected and found. */
export const zoneSheet: Sheet = {
  name: 'zone',
  further: ['zone-names'],
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) =>
    context.packet.surfaces.flatMap((surface) =>
      surface.zones.flatMap((zone) => zonePages(context, surface, zone)),
    ),
};

/** Heights in mm of a line of ticks, and of the line that tells a pattern's tiles apart. */
const TICKS_MM = 8.2;
const TILE_KEY_MM = 7;
/** The line that says not to set yet, where readings do not agree. */
const HELD_MM = 9;
/** A numbered circle with the space after it, and a box, in mm. */
const NUMBER_MM = 13;
const BOX_MM = 6;
/** Set by a browser, they come out a little wider at most. */
const WIDER = 1.03;

/** The zone's page, and where too many of its cuts would bear no name on its plan, the pages on which they do. */
function zonePages(context: SheetContext, surface: PacketSurface, zone: Zone): readonly SheetPage[] {
  const cuts = zoneCuts(surface, zone);
  const own = new Set(zone.pieces);
  const pieces = surface.pieces.filter(({ id }) => own.has(id));
  const said = {
    ...facts(context, surface, zone),
    cuts,
    tiles: tileKey(context, surface, pieces, zoneId(context.packet, surface, zone)),
  };
  const under = {
    fixedMm: (widthMm: number) =>
      (readingsSpeakAgainst(context) ? HELD_MM : 0) +
      (said.tiles.length > 0 ? TILE_KEY_MM : 0) +
      zoneFactsMm(context, said, widthMm) +
      tickLines(cuts, widthMm) * TICKS_MM,
    found: foundLines(context, surface, zone),
  };
  const named = zonePlan(context, surface, zone, { ...under, closer: false });
  const closer = closerPages(context, surface, zone, named.drawing);
  const plan = closer.length > 0 ? zonePlan(context, surface, zone, { ...under, closer: true }) : named;
  return [zonePage(context, surface, zone, { plan, said, closer: closer.length }), ...closer];
}

interface OnZonePage {
  readonly plan: ZonePlan;
  readonly said: object;
  /** Further pages that name the pieces. */
  readonly closer: number;
}

function zonePage(
  { packet, say, units }: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  { plan, said, closer }: OnZonePage,
): SheetPage {
  const { drawing, way, bars, apart, listApart, factsApart, parts } = plan;
  return {
    floor: surface.name,
    suffix: String(zone.number),
    figures: { zone: zone.number },
    landscape: way === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      counted: drawing.counted,
      numbered: drawing.numbered,
      unnamed: closer > 0 ? [] : unnamedPieces(surface, drawing.unnamed),
      bars: bars
        ? drawCheckBars({
            id: `${zoneId(packet, surface, zone)}-bars`,
            label: say('drawing.bars'),
            ...units,
            say,
          }).svg
        : '',
      ...said,
      found: parts,
      expected: foundFigures(parts.flatMap(({ lines }) => lines)),
      apart,
      listApart,
      factsApart,
      closer,
    },
  };
}

function facts(context: SheetContext, surface: PacketSurface, zone: Zone) {
  const { packet, say, time } = context;
  const set = packet.calendar.find(
    ({ code, zone: number, floor = surface.name }) =>
      code === 'set' && number === zone.number && floor === surface.name,
  );
  return {
    set: set ? time(set.from) : '',
    walks: walksOn(context),
    first: zone.first,
    last: zone.last,
    ...(zone.beyond === undefined ? {} : { beyond: zone.beyond }),
    wayOut: zone.wayOut ? edgeWords(surface, zone.wayOut, say) : '',
    // A floor that is laid is entered and left as anyone likes.
    noWayOut: zone.wayOut === undefined && surface.kind === 'floor' && !isLaid(packet),
    count: zone.pieces.length,
    unchecked: {
      own: uncheckedCuts(surface, zone, say),
      second: context.second ? uncheckedCuts(surface, zone, context.second.say) : '',
    },
    ...mortarFacts(context, surface, zone),
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

/** Powder for the zone, the rate it goes by with the trowel that leaves it, that by a deeper notch where one is advised, and the batches. */
function mortarFacts(context: SheetContext, surface: PacketSurface, zone: Zone) {
  const { packet, say } = context;
  const { notch } = packet.spec.products.mortar;
  const bed = orderedBed(packet.spec) ?? 0;
  const figures = sayFigures(context, { notchWidth: notch.width, notchDepth: notch.depth, bed });
  return {
    mortar: String(sayFigure(context, 'mortarKg', zoneMass(packet, zone))),
    rate: zone.mortarBy ? say('sheet.zone.rate', { by: zone.mortarBy, kind: notch.kind, ...figures }) : '',
    deeper: deeperNotch(context, surface, zone),
    batches: zone.batches,
  };
}

/** More boxes than these do not stand on a line behind their number, which is given again. */
const MOST_BOXES = 20;

/** The zone's cuts by number, with a box for each piece. */
function zoneCuts(surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  return surface.cuts.flatMap((cut) => {
    const pieces = cut.pieces.filter((piece) => inZone.has(piece));
    const lines = Math.ceil(pieces.length / MOST_BOXES);
    return Array.from({ length: lines }, (_, i) => ({
      number: cut.number,
      pieces: pieces.slice(i * MOST_BOXES, (i + 1) * MOST_BOXES),
      hard: isHard(cut),
    }));
  });
}

/** A number is never parted from its boxes, so that they take as many lines as they fill one after the other. */
function tickLines(cuts: readonly { readonly pieces: readonly string[] }[], widthMm: number): number {
  let [lines, left] = [0, 0];
  for (const { pieces } of cuts) {
    const wide = (NUMBER_MM + BOX_MM * pieces.length) * WIDER;
    if (wide > left) [lines, left] = [lines + 1, widthMm];
    left -= wide;
  }
  return lines;
}
