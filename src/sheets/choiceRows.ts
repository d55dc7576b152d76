import type { Candidate } from '../layout/Layout.ts';
import type { PacketChoice, PacketSurface } from '../packet/Packet.ts';
import type { SeenPiece } from '../packet/seenPieces.ts';
import type { SheetContext } from './SheetContext.ts';
import { type SeenDepth, seenFromDoor } from './seenFromDoor.ts';
import { smallestShare } from './smallestShare.ts';
import { taperedSize } from './taperedSize.ts';

/** One of two layouts between which the owner chooses. */
export interface Offer {
  readonly candidate: Candidate;
  readonly pieces: readonly SeenPiece[];
  readonly buy: PacketChoice['buy'];
}

/** One line of figures a question: what is asked, and an answer for each of the two layouts, that on the left first. */
export function choiceRows(context: SheetContext, surface: PacketSurface, own: Offer, other: Offer) {
  const { say } = context;
  const both = (code: string, tell: (offer: Offer) => string, figures = {}) => ({
    name: say(`sheet.choice-sheet.${code}`, figures),
    values: [tell(own), tell(other)],
  });
  const doors = [own, other].map(({ pieces }) =>
    seenFromDoor(surface, pieces, context.packet.spec.print.step),
  );
  const views = doors[0]!.flatMap(({ name }, k) => {
    const pair = doors.map((views) => views[k]);
    if (pair.some((view) => view === undefined)) return [];
    const line = (code: 'near' | 'far') => ({
      name: say(`sheet.choice-sheet.${code}`, { name }),
      values: pair.map((view) => depthWords(context, view![code])),
    });
    return [line('near'), line('far')];
  });
  return [
    both(
      'narrowest',
      ({ candidate }) => say('sheet.choice-sheet.narrow', smallestShare(context, candidate)),
      {
        border: surface.border ? 'yes' : 'no',
      },
    ),
    both('small', ({ candidate }) => String(candidate.underHalf)),
    both(
      'cut',
      ({ pieces }) => {
        const cut = pieces.filter(({ whole }) => !whole).length;
        return say('sheet.choice-sheet.ofAll', { cut, pieces: pieces.length });
      },
      { shared: isShared(context) ? 'yes' : 'no' },
    ),
    ...views,
    ...Object.keys(own.buy).map((key) =>
      both('buy', ({ buy }) => say('sheet.choice-sheet.bought', { ...buy[key] }), {
        tile: Object.keys(own.buy).length > 1 ? nameOf(context, key) : 'none',
      }),
    ),
  ];
}

/** Whether tiles are sawn that give more than one piece. */
function isShared({ packet }: SheetContext): boolean {
  return Object.values(packet.tiles).some(({ from }) => from.some(({ pieces }) => pieces.length > 1));
}

function nameOf({ packet }: SheetContext, key: string): string {
  return packet.spec.tiles.find((tile) => tile.key === key)?.name ?? key;
}

function depthWords(context: SheetContext, { depth }: SeenDepth): string {
  return depth === null
    ? context.say('sheet.choice-sheet.wholeTile')
    : context.say('sheet.choice-sheet.cutTo', { size: taperedSize(context, depth.wide, depth.narrow) });
}
