import type { Adjustment, Room, Suspect } from '../room/Room.ts';
import type { PacketNote } from './Packet.ts';

/** What the readings of a room have to say: that nothing checks them, which of them is suspect, and which was set aside. */
export function readingNotes({ room }: { readonly room: Pick<Room, 'adjustment'> }): PacketNote[] {
  const { adjustment } = room;
  return [
    ...noCheckNote(adjustment),
    ...adjustment.suspects.map(suspectNote),
    ...scatterNote(adjustment),
    ...adjustment.readings.filter(({ setAside }) => setAside).map(({ id }) => asideNote(id)),
  ];
}

function noCheckNote({ redundancy, measureNext }: Adjustment): PacketNote[] {
  if (redundancy > 0) return [];
  return [
    {
      code: 'room.noCheck',
      figures: { diagonal: measureNext ?? 'none' },
      at: measureNext ? [measureNext] : [],
      level: 'warn',
      words: measureNext
        ? `No check possible: measure one diagonal, ${measureNext} first.`
        : 'Nothing checks three walls: read each of them once more.',
    },
  ];
}

/** Ids of readings from a base line are told as the letter of their corner. */
const letters = (ids: readonly string[]) => [...new Set(ids.map((id) => id.replace(/:.*/, '')))].join(', ');

function suspectNote({ ids, slip, verdict, kind }: Suspect): PacketNote {
  const what = kind === 'exchanged' ? kind : verdict;
  return {
    code: `room.${what === 'exchanged' ? 'exchanged' : what === 'named' ? 'suspect' : 'suspects'}`,
    figures: {
      ids: letters(ids.slice(0, 2)),
      more: letters(ids.slice(2)) || 'none',
      slip: Math.abs(slip),
      sign: slip < 0 ? 'short' : 'long',
    },
    at: ids,
    level: 'warn',
    words: `Read ${letters(ids)} again.`,
  };
}

/** Readings that all together scatter more than tapes do, with none that stands out. */
function scatterNote({ globalTest, suspects, unitSd, precision }: Adjustment): PacketNote[] {
  if (!globalTest || globalTest.passed || suspects.length > 0) return [];
  return [
    {
      code: 'room.scatter',
      figures: { sd: Math.round((unitSd ?? 1) * precision.sd), said: precision.sd },
      at: [],
      level: 'info',
      words: 'The readings scatter more than their precision says.',
    },
  ];
}

function asideNote(id: string): PacketNote {
  const figures = { id: letters([id]) };
  return { code: 'room.setAside', figures, at: [id], level: 'info', words: `Reading ${id} is set aside.` };
}
