import type { PacketSurface } from '../packet/Packet.ts';
import type { Limit } from '../trade/index.ts';
import { limitGate } from './limitGate.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/**
 * What the job file says was read under a straightedge on a floor, one row a reading, in the figures of the job sheet. Readings on a
 * grid are told by their worst spots and are none of these.
 */
export function flatnessRead(context: SheetContext, { name }: PacketSurface) {
  const { limits, base } = context.packet;
  const held = limits.filter(({ rule, surface }) => rule.startsWith('flatness.') && surface === name);
  // Those that the job file names come before those of the grid.
  return held.slice(0, base.flatness.length).map((limit) => readRow(context, limit));
}

function readRow(context: SheetContext, limit: Limit) {
  const { say } = context;
  const { found, limit: asked, note } = limitGate(context, limit);
  const where = limit.at?.[0];
  return {
    edge: say('sheet.base-sheet.limit', { asked }),
    text: say('sheet.base-sheet.read', {
      gap: found,
      where: where === undefined ? 'none' : sayThing(say, where),
      note,
    }).trim(),
    state: say(`limit.${limit.pass ? 'pass' : 'fail'}`),
    failed: !limit.pass,
  };
}
