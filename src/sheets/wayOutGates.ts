import { floorName } from './floorName.ts';
import type { Gate } from './Gate.ts';
import { isLaid } from './isLaid.ts';
import type { SheetContext } from './SheetContext.ts';

/** Each floor without a doorway: whoever sets it asks where he gets out, since the order of its zones does not lead there. */
export function wayOutGates({ packet, say }: SheetContext): readonly Gate[] {
  if (isLaid(packet)) return [];
  return packet.surfaces
    .filter(({ kind, openings, zones }) => kind === 'floor' && openings.length === 0 && zones.length > 0)
    .map(({ name }) => {
      const floor = floorName(packet, name);
      return {
        what: say('gate.wayOut', { several: floor === '' ? 'no' : 'yes', floor }),
        limit: '',
        found: '',
        state: 'open',
        note: say('gate.wayOutNote'),
        source: '',
      };
    });
}
