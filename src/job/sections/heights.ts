import * as z from 'zod';
import { heightKind } from '../heightKind.ts';
import type { HeightSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { type HeightAbove, heightAbove } from '../values/heightAbove.ts';
import { length } from '../values/length.ts';
import { text } from '../values/text.ts';
import { type Notes, trouble } from './Notes.ts';

const heightForm = z
  .strictObject({
    height: leaf(length, 'Height as measured now.'),
    above: leaf(text, 'The layer it was measured from, or base.'),
    wanted: leaf(length, 'Height that is wanted over the finished tile.').optional(),
    needs: leaf(length, 'Height that an appliance needs over the finished tile.').optional(),
  })
  .transform(({ height, above, wanted, needs }): HeightAbove => {
    const least = wanted ?? needs;
    return least === undefined ? { height, above } : { height, above, wanted: least };
  });

/** Heights by the name of what was measured. */
export const heightsSchema = z
  .record(
    z.string(),
    z.union([leaf(heightAbove, 'Height as measured now, and above what: 1/4 in above vinyl.'), heightForm]),
  )
  .meta({ description: 'Flange, doors, meeting floors, appliances: as measured now, and above what.' });

/** `vinyl` finds the layer `sheet vinyl`; `base` finds the bare base. */
export function layerName(name: string, names: readonly string[], below: string): string | undefined {
  const given = name.toLowerCase();
  if (given === 'base') return below;
  return (
    names.find((layer) => layer.toLowerCase() === given) ??
    names.find((layer) => ` ${layer.toLowerCase()} `.includes(` ${given} `))
  );
}

/** Heights as measured, each over a layer of this base; without a named base there is nothing that they count from. */
export function buildHeights(
  given: z.output<typeof heightsSchema> | undefined,
  names: readonly string[],
  below: string | undefined,
  notes: Notes,
): readonly HeightSpec[] {
  const all = Object.entries(given ?? {});
  if (all.length > 0 && below === undefined)
    trouble(notes, 'noDatum', ['base', 'heights'], { names: all.map(([name]) => name).join(', ') }, true);
  return all.map(([name, at]) => {
    const above = layerName(at.above, names, below ?? 'unknown');
    if (above === undefined && at.above !== '')
      trouble(notes, 'unknownLayer', ['base', 'heights', name], { name: at.above, layers: names.join(', ') });
    return { name, kind: heightKind(name), ...at, above: above ?? at.above };
  });
}
