import { sawNearest, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Where the inner edge of a border is snapped: for each distance off a wall, the walls. */
export function borderLines(
  { say, length, longLength, packet }: SheetContext,
  { border, edges, joint }: PacketSurface,
): string[] {
  if (!border) return [];
  const walls = new Map<Ticks, string[]>();
  for (const { off, edge } of border.lines) walls.set(off, [...(walls.get(off) ?? []), edge]);
  const behind = border.lines.filter(({ edge }) =>
    edges.some((one) => nameOf(one.id) === edge && !one.touch),
  );
  return [
    ...[...walls].map(([off, own]) =>
      say('sheet.set-out.border', {
        off: longLength(sawNearest(off, packet.rounding.step)),
        walls: own.join(', '),
        count: own.length,
        joint: length(joint),
      }),
    ),
    ...(behind.length > 0
      ? [say('sheet.set-out.borderBehind', { walls: behind.map(({ edge }) => edge).join(', ') })]
      : []),
  ];
}

/** A doorway splits a wall in parts that are numbered. */
const nameOf = (id: string) => id.replace(/\.\d+$/, '');
