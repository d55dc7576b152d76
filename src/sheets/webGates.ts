import { floorOf } from './floorOf.ts';
import type { Gate } from './Gate.ts';
import { heldAgainst } from './heldAgainst.ts';
import type { SheetContext } from './SheetContext.ts';
import { thickestOf } from './thickestOf.ts';

/**
 * Pieces at openings that may break, as too little tile stays beside the opening: another start, or a signature before they are sawn. What is
 * thinner than its tile is thick nobody saws: there the signature is for an opening that is sawn through to the edge. From memory: it is a
 * rule of the hand that no standard gives.
 */
export function webGates(context: SheetContext): readonly Gate[] {
  const { packet, say } = context;
  return packet.surfaces.flatMap((surface) =>
    surface.faults
      .filter(({ code }) => code === 'web')
      .map(({ pieces, figures }) => {
        const found = Number(figures.size);
        const isThin = found < thickestOf(packet, surface, pieces);
        return {
          what: floorOf(packet, surface, say('gate.web', { pieces: pieces.join(', ') })),
          bound: say('sheet.job-sheet.least'),
          ...heldAgainst(context, { found, limit: Number(figures.limit), bound: 'least', pass: false }),
          state: 'fail',
          note: say(isThin ? 'gate.webThin' : 'gate.webNote'),
          source: '',
        };
      }),
  );
}
