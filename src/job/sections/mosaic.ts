import * as z from 'zod';
import { mean, printLength, type Ticks } from '../../measure/index.ts';
import { chipArea } from '../chipArea.ts';
import type { Chip, TileSpec } from '../Job.ts';
import { pointsPerFlat } from '../pointsPerFlat.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { chipCount } from '../values/chipCount.ts';
import { size } from '../values/length.ts';
import { pair } from '../values/pair.ts';
import { type Notes, trouble } from './Notes.ts';

/** Chips on a sheet: squares and rectangles unless they are told to be round or hexagons. */
export const mosaicSchema = z
  .strictObject({
    sheet: listOf(
      pair,
      'Length x width of a sheet with one joint: from the edge of its first chip to that of the first chip of the next sheet.',
    ),
    chips: leaf(chipCount, 'Chips along its length x along its width.'),
    round: leaf(size, 'Diameter of a round chip.').optional(),
    hexagon: leaf(size, 'A hexagon chip from flat to opposite flat.').optional(),
  })
  .meta({ description: 'Chips on a sheet, the joint of the job between them.' });

type Given = z.output<typeof mosaicSchema>;

/** Sides of the sheets that were read, less the joint that was read with them. */
export function sheetReadings({ sheet }: Given, joint: Ticks): readonly (readonly [Ticks, Ticks])[] {
  return sheet.map(([long, wide]) => [long - joint, wide - joint]);
}

/** How many chips a sheet has, and which they are where they are no rectangles. More than find room on it are told. */
export function chipsOf(given: Given, path: Path, notes: Notes): Pick<TileSpec, 'chips' | 'chip'> {
  const chip = chipOf(given);
  if (given.round !== undefined && given.hexagon !== undefined)
    trouble(notes, 'oneTileShape', [...path, 'mosaic'], { keys: 'round, hexagon' }, true);
  if (chip) checkRoom(given, chip, path, notes);
  return { chips: given.chips, ...(chip && { chip }) };
}

function chipOf({ round, hexagon }: Given): Chip | undefined {
  if (round !== undefined) return { kind: 'round', across: round };
  return hexagon === undefined ? undefined : { kind: 'hexagon', across: hexagon };
}

/** Round chips lie no closer than hexagons of the same measure do, so that both take at least that much of a sheet. */
function checkRoom({ sheet, chips }: Given, chip: Chip, path: Path, notes: Notes): void {
  const [length, width] = [mean(sheet.map(([long]) => long)), mean(sheet.map(([, wide]) => wide))];
  const count = chips[0] * chips[1];
  const least = chipArea({ kind: 'hexagon', across: chip.across });
  if (!(count * least > length * width)) return;
  const say = (ticks: Ticks) => printLength(Math.round(ticks), notes.system);
  const most = Math.sqrt(((length * width) / count) * pointsPerFlat);
  const figures = { chips: count, across: say(chip.across), length: say(length), width: say(width) };
  trouble(notes, 'chipsOverSheet', [...path, 'mosaic', chip.kind], { ...figures, most: say(most) });
}
