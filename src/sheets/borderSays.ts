import type { FieldEnds, Solved } from '../layout/border/Border.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What a border is made of, course by course, how its pieces are named, and what an open width was chosen for. */
export function borderSays(
  { packet, say, length }: SheetContext,
  { border, pieces }: PacketSurface,
): string[] {
  if (!border) return [];
  const { courses } = border;
  const own = pieces.filter((piece) => piece.border && !piece.border.inlay);
  const first = own.find((piece) => piece.border!.course === 1)!;
  const behind = own.find((piece) => piece.border!.course === 0);
  return [
    ...courses.map(({ tile, width, corners, through }, i) =>
      say('border.course', {
        number: i + 1,
        of: courses.length,
        tile: packet.spec.tiles.find(({ key }) => key === tile)?.name ?? tile,
        width: length(width),
        corners,
        through: through ?? 'right',
      }),
    ),
    say('border.named', {
      piece: first.id,
      wall: first.border!.wall,
      corner: first.border!.wall.split('-')[0]!,
    }),
    ...(behind ? [say('border.behind', { piece: behind.id })] : []),
    ...courses.flatMap(({ solved, width }) => (solved ? solvedSays({ say, length }, solved, width) : [])),
  ];
}

/** What an open width was chosen for, and how the field comes out the other way. */
function solvedSays(
  { say, length }: Pick<SheetContext, 'say' | 'length'>,
  solved: Solved,
  width: Ticks,
): string[] {
  const { other } = solved;
  const figures = ({ ends, walls: [one, last], run, repeats, over }: FieldEnds) => ({
    ...{ ends, one, other: last, run: length(run), repeats },
    over: over === undefined ? '' : length(over),
  });
  return [
    say('border.solved', { width: length(width), ...figures(solved) }),
    ...(other && (other.ends !== 'none' || other.over !== undefined)
      ? [say('border.solvedOther', figures(other))]
      : []),
  ];
}
