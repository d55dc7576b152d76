import type { Gate } from './Gate.ts';
import { isLaid } from './isLaid.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/** Each drain that new layers bury: its grate is set to the tile before a tile lies, since nothing raises it afterwards. */
export function drainGates({ packet, say, length }: SheetContext): readonly Gate[] {
  if (isLaid(packet) || packet.layers.length === 0) return [];
  const drains = packet.surfaces.flatMap(({ obstacles }) =>
    obstacles.filter(({ facts }) => facts.meets === 'drain'),
  );
  return drains.map(({ name }) => ({
    what: say('gate.drain', { name: sayThing(say, name) }),
    bound: say('sheet.job-sheet.shouldBe'),
    limit: say('gate.drainLimit'),
    found: '',
    state: 'open',
    note: say('gate.drainNote', { stack: length(packet.heights.stack) }),
    source: '',
  }));
}
