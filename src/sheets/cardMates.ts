import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import type { Say } from './SheetView.ts';
import { tileMates } from './tileMates.ts';

/** Which pieces of a card come from offcuts of other cuts, and which leave one for another; a sentence for each of these, its pieces named where not all are meant. */
export function cardMates(
  say: Say,
  packet: Packet,
  { name, cuts: all }: PacketSurface,
  { pieces }: Cut,
): readonly string[] {
  const matesOf = tileMates(packet);
  const groups = new Map<string, { offcut: string; cuts: string; pieces: string[] }>();
  for (const piece of pieces) {
    const mates = matesOf(name, piece);
    if (!mates) continue;
    const [offcut, cuts] = [mates.isOffcut ? 'yes' : 'no', mates.cuts.join(', ')];
    const group = groups.get(`${offcut} ${cuts}`) ?? { offcut, cuts, pieces: [] };
    groups.set(`${offcut} ${cuts}`, { ...group, pieces: [...group.pieces, piece] });
  }
  return [...groups.values()].map((group) =>
    say('sheet.hard-cuts.offcut', {
      ...group,
      listed: group.offcut === 'yes' && isListed(all, group.cuts) ? 'yes' : 'no',
      pieces: group.pieces.length === pieces.length ? 'all' : group.pieces.join(', '),
    }),
  );
}

/** Whether a cut, by its number, stands on the saw list and on no card. */
const isListed = (all: readonly Cut[], number: string): boolean =>
  all.some((cut) => String(cut.number) === number && !isHard(cut));
