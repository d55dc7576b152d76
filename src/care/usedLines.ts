import type { Job, TileSpec } from '../job/Job.ts';
import { tileMeasures } from '../job/tileMeasures.ts';
import type { CareLine } from './Care.ts';
import { line } from './careLines.ts';

/**
 * What was used and is to be kept on record. A value that the job does not know becomes a `.blank` line to fill in by
 * hand.
 */
export function usedLines(job: Job): readonly CareLine[] {
  const { mortar, grout, sealer, sealant } = job.products;
  return [
    ...job.tiles.flatMap((tile) => tileLines(tile)),
    line('care.used.joint', { joint: job.joint }),
    known('care.used.mortar', mortar.name),
    line(`care.used.groutKind.${grout.kind}`),
    known('care.used.grout', grout.name),
    known('care.used.groutColour', grout.colour),
    known('care.used.groutBatch', grout.batch),
    known('care.used.sealant', sealant.name),
    ...(sealer.kind === 'none' ? [line('care.used.noSealer')] : [known('care.used.sealer', sealer.name)]),
    ...(sealer.kind === 'none' ? [] : [line('care.used.sealDate.blank')]),
    line('care.used.spares', { keepShare: job.waste.keep }),
    line('care.used.groutPowder'),
  ];
}

function tileLines(tile: TileSpec): readonly CareLine[] {
  return [
    line('care.used.tile', {
      name: tile.name,
      ...tileMeasures(tile),
      thickness: tile.thickness,
    }),
    known('care.used.lot', tile.box?.lot),
    known('care.used.caliber', tile.box?.caliber),
    known('care.used.shade', tile.box?.shade),
  ];
}

function known(code: string, value: string | undefined): CareLine {
  return value === undefined || value === '' ? line(`${code}.blank`) : line(code, { value });
}
