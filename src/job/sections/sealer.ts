import * as z from 'zod';
import { sealingNeed } from '../../trade/index.ts';
import type { GroutSpec, SealerSpec, TileSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { oneOf } from '../values/oneOf.ts';
import { areaRange, time, volume } from '../values/quantities.ts';
import { text } from '../values/text.ts';
import { type Notes, orDefault } from './Notes.ts';
import { statedFields } from './statedFields.ts';

const kind = oneOf(['penetrating', 'film', 'none']);

/** The sealer, with the figures of its own sheet. */
export const sealerSchema = z
  .strictObject({
    name: leaf(text, 'What it is called.').optional(),
    kind: leaf(kind, 'penetrating, film or none.').optional(),
    bottle: leaf(volume, 'Content of a bottle.').optional(),
    covers: leaf(areaRange, 'Floor that a bottle covers; the smaller figure of a range counts.').optional(),
    cure: leaf(time, 'From sealing to first use.').optional(),
    by: leaf(text, 'Who comes to seal: setter, owner or another.').optional(),
  })
  .meta({ description: 'The sealer, with the figures of its own sheet.' });

const COVERS = { inches: '200 sq ft', mm: '20 m2' };
const BOTTLE = { inches: '1 qt', mm: '1 L' };

/** The sealer with its defaults; none where neither grout nor tile needs one, as with epoxy grout in glazed tile. */
export function buildSealer(
  given: z.output<typeof sealerSchema> | undefined,
  grout: GroutSpec,
  tiles: readonly TileSpec[],
  notes: Notes,
): SealerSpec {
  const at = (key: string) => ['products', 'sealer', key];
  const needs = tiles.map(({ material, glazed }) => sealingNeed(material, glazed, grout.kind));
  const usual = needs.some((need) => need.grout || need.tile) ? 'penetrating' : 'none';
  const sealed = orDefault(notes, given?.kind, at('kind'), usual, kind);
  // Where nothing is sealed no figure of a sealer is used, so none is told as assumed.
  const noted = sealed === 'none' ? { ...notes, defaults: [] } : notes;
  const [covers] = orDefault(noted, given?.covers, at('covers'), COVERS, areaRange, 'M');
  const litres = orDefault(noted, given?.bottle, at('bottle'), BOTTLE, volume);
  return {
    ...(given?.name === undefined ? {} : { name: given.name }),
    ...(given?.by === undefined ? {} : { by: given.by }),
    kind: sealed,
    coversM2PerLitre: covers / litres,
    bottleLitres: litres,
    cureHours: orDefault(noted, given?.cure, at('cure'), '24 h', time, 'M'),
    stated: statedFields(given, { kind: 'kind', covers: 'coversM2PerLitre', cure: 'cureHours' }),
  };
}
