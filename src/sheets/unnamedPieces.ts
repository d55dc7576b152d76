import { textWidth } from '../drawing/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';

/** Pieces for whose name, or the number of whose cut, a plan has no room: those of one cut together, whole tiles first and without a number. */
export interface Unnamed {
  readonly number: number | null;
  readonly pieces: readonly string[];
}

/** The pieces of a plan that it does not name, cut by cut in rising order. */
export function unnamedPieces(surface: PacketSurface, names: readonly string[]): readonly Unnamed[] {
  const open = new Set(names);
  const alike = new Map<PacketPiece['cut'], string[]>();
  for (const { id, cut } of surface.pieces.filter(({ id }) => open.has(id)))
    alike.set(cut, [...(alike.get(cut) ?? []), id]);
  return [...alike].sort(([a], [b]) => (a ?? 0) - (b ?? 0)).map(([number, pieces]) => ({ number, pieces }));
}

/** Type in points, a circled number with the space round it, a comma with its space, and a line, in mm. */
const TYPE = 10;
const MM = { number: 8, comma: 2, line: 6.2 } as const;

/** Roughly how high the list of unnamed pieces stands under its heading, in mm; 0 where there is none. */
export function unnamedHeight(groups: readonly Unnamed[], heading: string, widthMm: number): number {
  if (groups.length === 0) return 0;
  const long = groups.reduce(
    (sum, { pieces }) =>
      sum + MM.number + pieces.reduce((all, id) => all + textWidth(id, TYPE) + MM.comma, 0),
    textWidth(heading, TYPE),
  );
  return Math.ceil((long * 1.05) / widthMm) * MM.line + MM.comma;
}
