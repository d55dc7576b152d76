import type { Cut } from '../cuts/Cut.ts';
import { floorName } from './floorName.ts';
import type { SheetContext } from './SheetContext.ts';
import type { SawnPiece } from './sawnPieces.ts';
import type { TileMates } from './tileMates.ts';

type Told = Pick<SheetContext, 'say' | 'second'>;

/** Two cuts of one tile: the one that is sawn first, and one that comes from its offcut. */
export interface MateExample {
  readonly first: string;
  readonly offcut: string;
}

/** What stands under the name of a piece that shares its tile: from which cut's offcut it is sawn, or for which cut its own is kept; empty for others. */
export function mateSaid(
  { say }: Pick<Told, 'say'>,
  mates: Pick<TileMates, 'isOffcut' | 'cuts'> | undefined,
): string {
  if (!mates) return '';
  return say('sheet.saw-list.mate', { offcut: mates.isOffcut ? 'yes' : 'no', cuts: mates.cuts.join(', ') });
}

/** What stands beside a piece that is sawn for an earlier zone than its own: the zone that it is set in; empty for others. */
export function laterSaid(
  { say, packet }: Pick<SheetContext, 'say' | 'packet'>,
  { later }: Pick<SawnPiece, 'later'>,
): string {
  if (!later) return '';
  const floor = floorName(packet, later.surface.name) || 'none';
  return say('sheet.saw-list.later', { zone: later.zone.number, floor });
}

/** The pair of cuts that a piece and its mate are of, by which a list explains itself. */
export function exampleOf({ number }: Pick<Cut, 'number'>, mates: TileMates | undefined): MateExample[] {
  if (!mates) return [];
  const [own, other] = [String(number), mates.cuts[0]!];
  return [mates.isOffcut ? { first: other, offcut: own } : { first: own, offcut: other }];
}

/**
 * The line that explains these words by the first pair on the list and the first piece that is sawn for an earlier zone, in each language of
 * the crew; none where no piece shares its tile.
 */
export function matesSaid(
  { say, second }: Told,
  lines: readonly { readonly example: MateExample | undefined; readonly later: readonly string[] }[],
): string[] {
  const example = lines.flatMap((line) => line.example ?? [])[0];
  if (!example) return [];
  const figures = {
    from: mateSaid({ say }, { isOffcut: true, cuts: [example.first] }),
    plus: mateSaid({ say }, { isOffcut: false, cuts: [example.offcut] }),
    cut: example.first,
    other: example.offcut,
  };
  const later = lines.flatMap((line) => line.later).find((words) => words !== '');
  return [say, ...(second ? [second.say] : [])].map((tell) =>
    [
      tell('sheet.saw-list.mates', figures),
      ...(later ? [tell('sheet.saw-list.laters', { later })] : []),
    ].join(' '),
  );
}
