import type { Gate } from './Gate.ts';
import { isLaid } from './isLaid.ts';
import type { SheetContext } from './SheetContext.ts';

/** Tiles that are there already but do not reach: a floor that is begun with them ends in a box of another shade. */
export function stockGates({ packet, say }: SheetContext): readonly Gate[] {
  if (isLaid(packet)) return [];
  return packet.spec.tiles.flatMap(({ key, name, box }): Gate[] => {
    const plan = packet.tiles[key];
    if (!plan || plan.onHand === 0 || plan.onHand >= plan.needed) return [];
    return [
      {
        what: say('gate.stock', { name }),
        limit: '',
        found: '',
        state: 'open',
        holds: true,
        note: say('gate.stockNote', {
          hereCount: plan.onHand,
          layCount: plan.needed,
          told: box?.lot === undefined ? 'no' : 'yes',
          lot: box?.lot ?? '',
        }),
        source: '',
      },
    ];
  });
}
