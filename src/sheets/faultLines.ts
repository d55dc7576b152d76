import type { Fault } from '../layout/Layout.ts';
import { sawDown } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import { gapLeft } from './gapLeft.ts';
import { measureOf } from './measureOf.ts';
import { noCheck } from './noCheck.ts';
import type { SheetContext } from './SheetContext.ts';
import { sawnOfFault } from './sawnOfFault.ts';
import { sayApart } from './sayApart.ts';
import { surfaceFigures } from './surfaceFigures.ts';
import { taperedSize } from './taperedSize.ts';
import { taperLines } from './taperTable.ts';
import { thinToSaw } from './thinToSaw.ts';

/** Names in a line where some will do. */
const SOME_NAMES = 8;

/**
 * What the layout of a surface itself has to say, one line a fault, with the pieces by name, `all` of them for the crew or `some` where
 * starts are compared; or the one line that there is none.
 */
export function faultLines(
  context: SheetContext,
  surface: PacketSurface,
  names: 'all' | 'some',
): readonly string[] {
  const tapers = taperLines(context, surface);
  const faults =
    surface.faults.length > 0
      ? surface.faults.map((fault) => faultLine(context, surface, fault, names))
      : [context.say('fault.none')];
  return [...faults, ...tapers, ...noCheck(context, surface)];
}

/** Pieces that may break at the saw: no setter may find them out there. */
const BREAKS: ReadonlySet<string> = new Set(['web', 'sliver']);

/** What the layout has to say of pieces that may break while they are cut. */
export function breakLines(context: SheetContext, surface: PacketSurface): readonly string[] {
  const thin = thinToSaw(context.packet, surface).map(({ fault }) => fault);
  return surface.faults
    .filter((fault) => BREAKS.has(fault.code) || thin.includes(fault))
    .map((fault) => faultLine(context, surface, fault, 'all'));
}

/** Faults whose size is that of a piece, which the saw list gives as it is sawn. */
const SAWN: ReadonlySet<string> = new Set(['underHalf', 'thinStrip', 'nearFull']);

function figuresOf(context: SheetContext, surface: PacketSurface, fault: Fault): Fault['figures'] {
  const { code } = fault;
  const tile = context.packet.spec.tiles.find(({ key }) => key === fault.figures.tile);
  const figures = tile ? { ...fault.figures, tile: tile.name } : fault.figures;
  const { size } = figures;
  if (!SAWN.has(code) || typeof size !== 'number') return figures;
  const sawn = code === 'thinStrip' ? undefined : sawnOfFault(context, surface, fault);
  const down = sawDown(size, context.packet.spec.print.step);
  return { ...figures, size: sawn ? taperedSize(context, sawn.wide, sawn.narrow) : down };
}

/** Faults that hold a size against a limit that it must not come under or over. */
const HELD: ReadonlySet<string> = new Set([...SAWN, 'web', 'borderJoint', 'offsetBound']);

/** Faults whose limit is a cut, which is told as such a cut would be. */
const CUT_LIMIT: ReadonlySet<string> = new Set(['underHalf', 'offsetBound']);

/** The figures in print. A size and its limit that differ never read alike: then both are told as they are, as fine as that takes. */
function saidOf(context: SheetContext, surface: PacketSurface, fault: Fault) {
  const { code } = fault;
  const { step } = context.packet.spec.print;
  const figures = figuresOf(context, surface, fault);
  const { limit } = figures;
  const printed =
    CUT_LIMIT.has(code) && typeof limit === 'number' ? { ...figures, limit: sawDown(limit, step) } : figures;
  const said = surfaceFigures(context, surface, printed);
  if (!HELD.has(code) || said.size !== said.limit) return said;
  const { size = 0, limit: exact = 0 } = fault.figures;
  return { ...said, ...sayApart(context, { size, limit: exact }) };
}

function faultLine(
  context: SheetContext,
  surface: PacketSurface,
  fault: Fault,
  names: 'all' | 'some',
): string {
  const most = names === 'all' ? fault.pieces.length : SOME_NAMES;
  const shown = fault.pieces.slice(0, most).join(', ');
  const more = fault.pieces.length - most;
  return context.say(`fault.${fault.code}`, {
    ...saidOf(context, surface, fault),
    pieces: more > 0 ? context.say('fault.more', { pieces: shown, count: more }) : shown,
    edge: edgeWords(surface, fault.edge ?? '', context.say),
    measure: measureOf(context, surface, fault.pieces, fault.figures),
    ...(fault.code === 'gapOnly' ? gapLeft(context, surface, fault.edge ?? '') : {}),
  });
}
