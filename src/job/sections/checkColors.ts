import { printLength, type System, TICKS_PER_64TH } from '../../measure/index.ts';
import type { TileSpec } from '../Job.ts';
import type { Path } from '../shape/Trouble.ts';
import { tileMeasures } from '../tileMeasures.ts';
import { type Notes, trouble } from './Notes.ts';

/**
 * The two colors of a checker are of one size and shape, and of those of the tile of the pattern in whose place they lie: its first.
 * What a sixty-fourth of an inch parts is one size.
 */
export function checkColors(
  colors: readonly [string, string],
  first: string | undefined,
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): void {
  const [one, other, tile] = [...colors, first].map((key) => tiles.find((found) => found.key === key));
  const say = (of: TileSpec) => sayMeasures(of, notes.system);
  if (one && other && !alike(one, other))
    trouble(notes, 'checkerSizes', [...path, 'checker'], {
      one: one.name,
      size: say(one),
      other: other.name,
      otherSize: say(other),
    });
  if (one && tile && !alike(one, tile))
    trouble(notes, 'checkerPlace', [...path, 'checker'], {
      one: one.name,
      size: say(one),
      tile: tile.name,
      tileSize: say(tile),
    });
}

function alike(one: TileSpec, other: TileSpec): boolean {
  const [a, b] = [measuresOf(one), measuresOf(other)];
  return a.form === b.form && a.sizes.every((size, i) => Math.abs(size - b.sizes[i]!) <= TICKS_PER_64TH);
}

/** What two tiles must have in common so that one lies in the place of the other. */
function measuresOf({ length, width, shape }: TileSpec) {
  if (shape?.kind === 'octagon') return { form: shape.kind, sizes: [length, width, shape.corner] };
  if (shape?.kind === 'chevron')
    return { form: `${shape.kind} ${shape.hand}`, sizes: [length, width, shape.rise] };
  return { form: shape?.kind ?? 'rectangle', sizes: [length, width] };
}

/** A tile in words: of one that is no rectangle its shape too, as the job file names it. */
function sayMeasures(tile: TileSpec, system: System): string {
  const { shape, long, wide } = tileMeasures(tile);
  const size = `${printLength(long, system)} x ${printLength(wide, system)}`;
  return shape === 'rectangle' ? size : `${shape} ${size}`;
}
