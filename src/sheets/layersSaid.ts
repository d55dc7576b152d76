import type { Say } from './SheetView.ts';
import { sayThing } from './sayThing.ts';

/** The layers that figures name, by their usual names; nothing where they name none. */
export function layersSaid(
  say: Say,
  { layers }: Readonly<Record<string, number | string>>,
): { readonly layers?: string } {
  if (typeof layers !== 'string') return {};
  const named = layers.split(', ').map((one) => sayThing(say, one));
  return { layers: named.join(', ') };
}
