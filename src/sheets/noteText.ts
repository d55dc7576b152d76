import type { PacketNote, PacketSurface } from '../packet/Packet.ts';
import { gapLeft } from './gapLeft.ts';
import { limitName } from './limitName.ts';
import { measureOf } from './measureOf.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';
import { sayThing } from './sayThing.ts';
import { surfaceFigures } from './surfaceFigures.ts';
import { wouldPassText } from './wouldPassText.ts';

/** A note of the packet as a sentence: of a limit that fails, its name and what would pass; of one floor of several, its name first. */
export function noteText(context: SheetContext, note: PacketNote): string {
  const { code, figures, at } = note;
  const surface = surfaceOf(context.packet.surfaces, note);
  const sentence = context.say(code, {
    ...(surface ? surfaceFigures(context, surface, figures) : sayFigures(context, figures)),
    ...(surface && code.startsWith('fault.') ? { measure: measureOf(context, surface, at, figures) } : {}),
    ...(surface && code === 'fault.gapOnly' ? gapLeft(context, surface, String(figures.edge)) : {}),
  });
  const limit = context.packet.limits.find(
    (one) =>
      !one.pass && `limit.${one.rule}` === code && one.found === figures.found && one.limit === figures.limit,
  );
  const about = code.startsWith('height.') ? sayThing(context.say, at[0] ?? '') : note.surface;
  const name = about === undefined ? '' : `${about}: `;
  if (!limit?.wouldPass) return `${name}${sentence}`;
  const { wouldPass } = limit;
  return `${limitName(context, limit)}. ${wouldPassText(context, wouldPass)}`;
}

/** The surface that a note is of; where it tells none, as in a packet from before it did, the one with the edge that it names, else the first. */
function surfaceOf(
  surfaces: readonly PacketSurface[],
  { figures, surface }: PacketNote,
): PacketSurface | undefined {
  const own = surfaces.find(({ name }) => name === surface);
  if (own) return own;
  const named = String(figures.edge ?? '');
  return surfaces.find(({ edges }) => edges.some(({ id }) => named.startsWith(id))) ?? surfaces[0];
}
