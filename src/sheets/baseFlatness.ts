import { longestSide } from '../job/longestSide.ts';
import { readOnOld } from '../job/readOnOld.ts';
import { tilesLaid } from '../layout/tilesLaid.ts';
import type { Flatness } from '../materials/Flatness.ts';
import { M2_PER_SQ_FT, printVolume } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import {
  CHECK_AREA,
  type FlatnessClass,
  flatnessClass,
  straightedgeChecks,
  tightFrom,
} from '../trade/index.ts';
import { flatnessRead } from './flatnessRead.ts';
import { heldAgainst } from './heldAgainst.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';
import { straightedgeSaid } from './straightedgeSaid.ts';

/** How flat a floor must be and is, what fills it, and how often to lay the straightedge. */
export function baseFlatness(context: SheetContext, surface: PacketSurface) {
  const { packet, say, length } = context;
  const own = packet.spec.tiles.filter(({ key }) => tilesLaid(surface).includes(key));
  const asked = flatnessClass(longestSide(own, packet.spec.joint), packet.spec.print.system);
  const { flatness } = surface;
  const read = flatnessRead(context, surface);
  return {
    asked: say('sheet.base-sheet.asked', {
      class: asked.name,
      gap: length(asked.gap),
      over: straightedgeSaid(context, asked.over),
      fits: longestWay(surface) >= asked.over ? 'yes' : 'no',
      shortGap: length(asked.shortGap),
      shortOver: straightedgeSaid(context, asked.shortOver),
      read: readUnder(context, surface, asked),
    }),
    edges: otherEdge(context, asked),
    checkCount: say('sheet.base-sheet.checks', {
      count: straightedgeChecks(surface.areaM2),
      area: checkArea(context),
      readCount: read.length,
    }),
    spots: [...read, ...(flatness?.under ?? []).map((under) => spotRow(context, surface, under))],
    kept: flatness
      ? say('sheet.base-sheet.kept', { class: flatness.class, range: length(flatness.range) })
      : '',
    fill: flatness ? fillLines(context, flatness) : [],
  };
}

/** The farthest that two corners of a floor are apart: no longer straightedge lies on it. */
function longestWay({ outline }: PacketSurface): number {
  return Math.max(...outline.flatMap(([x, y]) => outline.map(([u, v]) => Math.hypot(u - x, v - y))));
}

/** Which short straightedge goes with which tile, where a longer or shorter tile has another one; else empty. */
function otherEdge(context: SheetContext, asked: FlatnessClass): string {
  const { say, length, units } = context;
  const side = tightFrom(units.system);
  const other = flatnessClass(asked.name === 'tight' ? 0 : side, units.system);
  if (other.shortOver === asked.shortOver) return '';
  return say('sheet.base-sheet.edges', {
    shortOver: straightedgeSaid(context, asked.shortOver),
    shortGap: length(asked.shortGap),
    otherOver: straightedgeSaid(context, other.shortOver),
    otherGap: length(other.shortGap),
    long: asked.name === 'tight' ? 'yes' : 'no',
    side: length(side),
  });
}

/**
 * The gap under each other straightedge that the floor was read with, so that it stands here as on the job sheet; else `none`. Where that gap
 * is the short straightedge's own it is no rule: whoever read it as one would ask a floor for less.
 */
function readUnder(
  context: SheetContext,
  surface: PacketSurface,
  { over, shortOver, shortGap }: FlatnessClass,
): string {
  const { packet, say, length } = context;
  const others = packet.limits.flatMap((one) =>
    one.rule.startsWith('flatness.') &&
    one.surface === surface.name &&
    one.over !== undefined &&
    one.over !== over &&
    one.over !== shortOver &&
    Number(one.limit) > shortGap
      ? [say('limit.under', { gap: length(Number(one.limit)), over: straightedgeSaid(context, one.over) })]
      : [],
  );
  return [...new Set(others)].join(', ') || 'none';
}

/** Floor for one straightedge check, in the units of the job. */
function checkArea({ units, number }: SheetContext): string {
  const squareFeet = CHECK_AREA.value;
  return units.system === 'mm' ? `${number(squareFeet * M2_PER_SQ_FT)} m²` : `${number(squareFeet)} sq ft`;
}

function spotRow(context: SheetContext, surface: PacketSurface, under: Flatness['under'][number]) {
  const { say, length } = context;
  const { straightedge, limit, pass, worst } = under;
  const apart = worst
    ? heldAgainst(context, { found: worst.depth, limit, bound: 'most', pass })
    : { found: '', limit: length(limit) };
  const edge = say('sheet.base-sheet.straightedge', {
    length: straightedgeSaid(context, straightedge),
    limit: apart.limit,
  });
  if (!worst) return { edge, text: say('sheet.base-sheet.tooFar'), state: '', failed: false };
  const [row, number] = [worst.row, worst.number];
  const old = readOnOld(context.packet.base);
  return {
    edge,
    text: [
      say('sheet.base-sheet.worst', {
        kind: worst.kind,
        depth: apart.found,
        row,
        number,
        floor: surface.name,
      }),
      ...(old === undefined ? [] : [say('gate.again', { layers: sayThing(say, old) })]),
    ].join(' '),
    // What passes on a floor that comes up is read again on the base under it.
    state: pass && old !== undefined ? '' : say(`limit.${pass ? 'pass' : 'fail'}`),
    failed: !pass,
  };
}

function fillLines({ packet, say, length, units }: SheetContext, flatness: Flatness): readonly string[] {
  const metric = { ...units, system: 'mm' } as const;
  const bag = packet.base.fillBagLitres;
  const line = (code: string, mean: number, litres: number, bags: number | undefined) =>
    say(`sheet.base-sheet.${code}`, {
      mean: length(mean),
      volume:
        units.system === 'mm'
          ? printVolume(litres, units)
          : `${printVolume(litres, units)} (${printVolume(litres, metric)})`,
      bags: bags ?? 0,
      bag: bag === undefined ? '' : printVolume(bag, units),
    });
  return [
    line('patch', flatness.patchMean, flatness.patchLitres, flatness.patchBags),
    line('level', flatness.levelMean, flatness.levelLitres, flatness.levelBags),
  ];
}
