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
    ...courses.flatMap(({ solved, width }) =>
      solved
        ? [
            say('border.solved', {
              width: length(width),
              ends: solved.ends,
              one: solved.walls[0],
              other: solved.walls[1],
              run: length(solved.run),
              repeats: solved.repeats,
            }),
          ]
        : [],
    ),
  ];
}
