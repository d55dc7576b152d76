import { floorOf } from './floorOf.ts';
import type { Gate } from './Gate.ts';
import { heldAgainst } from './heldAgainst.ts';
import type { SheetContext } from './SheetContext.ts';
import { thinToSaw } from './thinToSaw.ts';

/** Strips that break at the saw: another start, or a signature before they are sawn. */
export function stripGates(context: SheetContext): readonly Gate[] {
  const { packet, say } = context;
  return packet.surfaces
    .flatMap((surface) => thinToSaw(packet, surface).map((thin) => ({ ...thin, surface })))
    .map(({ fault: { pieces, figures }, thickness, surface }) => ({
      what: floorOf(packet, surface, say('gate.strip', { pieces: pieces.join(', ') })),
      bound: say('sheet.job-sheet.least'),
      ...heldAgainst(context, { found: Number(figures.size), limit: thickness, bound: 'least', pass: false }),
      state: 'fail',
      note: say('gate.stripNote'),
      source: '',
    }));
}
