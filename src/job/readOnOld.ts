import type { BaseSpec } from './Job.ts';

/**
 * The layer that the base was read on, where that comes up: what was read on it says nothing yet of the base that is tiled.
 * Undefined where the base was read as it will be tiled.
 *
 * @example readOnOld({ removed: [{ name: 'vinyl', thickness: 640 }], readOn: 'boards' }) //=> undefined
 * @example readOnOld({ removed: [{ name: 'vinyl', thickness: 640 }] }) //=> 'vinyl'
 */
export function readOnOld({ removed, readOn }: Pick<BaseSpec, 'removed' | 'readOn'>): string | undefined {
  const old = removed.map(({ name }) => name);
  return readOn === undefined ? old.at(-1) : old.find((name) => name === readOn);
}
