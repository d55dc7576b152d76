import type { Job } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import { isSpread } from './layersUnder.ts';

/**
 * The bed under the tile as the heights of the job count it, in ticks; undefined where the job states no layers or no notch, so
 * that nothing can differ.
 *
 * @example
 * statedBed({ base: { fresh: [] }, products: { mortar: { stated: [] } }, defaults: [] }) //=> undefined
 */
export function statedBed({
  base,
  products,
  defaults,
}: {
  readonly base: Pick<Job['base'], 'fresh'>;
  readonly products: { readonly mortar: Pick<Job['products']['mortar'], 'stated'> };
  readonly defaults: Job['defaults'];
}): Ticks | undefined {
  if (!products.mortar.stated.includes('notch')) return undefined;
  if (defaults.some(({ path }) => path === 'base.new')) return undefined;
  const bed = base.fresh.at(-2);
  return bed && isSpread(bed) ? bed.thickness : undefined;
}
