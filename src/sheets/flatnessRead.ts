import type { Ticks } from '../measure/index.ts';
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
  return base.flatness.flatMap(({ gap }, i) => (held[i] ? [readRow(context, held[i], gap)] : []));
}

function readRow(context: SheetContext, limit: Limit, gap: Ticks) {
  const { say, length } = context;
  const { readOn } = limit;
  const { found, limit: asked, note, state } = limitGate(context, limit);
  const where = limit.at?.[0];
  return {
    edge: say('sheet.base-sheet.limit', { asked }),
    text: say('sheet.base-sheet.read', {
      gap: found || length(gap),
      where: where === undefined ? 'none' : sayThing(say, where),
      // The gap stands before it already.
      note:
        state === 'open' && readOn !== undefined
          ? say('gate.again', { layers: sayThing(say, readOn) })
          : note,
    }).trim(),
    state: state === 'open' ? '' : say(`limit.${limit.pass ? 'pass' : 'fail'}`),
    failed: !limit.pass,
  };
}
