import type { Meets } from '../job/Job.ts';
import { type System, TICKS_PER_MM } from '../measure/index.ts';
import { edgeSides } from './edgeSides.ts';
import type { Laid } from './laidSurfaces.ts';
import type { Material } from './Material.ts';
import { rounded } from './rounded.ts';
import { wholeLength } from './wholeLength.ts';

/** Edges at which tile ends free, with no wall or cabinet to end at. */
const FREE: readonly Meets[] = ['doorway', 'floor', 'stair'];

/**
 * Edge profile or threshold along every edge at which tile ends free: door lines, but where tile goes on beyond, other floors and
 * stairs. The length is that of the tile's edge there; nothing where the job has no such edge.
 */
export function profileLine(surfaces: readonly Laid[], system: System): readonly Material[] {
  const runs = surfaces.flatMap(freeRuns);
  if (runs.length === 0) return [];
  const amount = rounded(
    runs.reduce((sum, { runMetres }) => sum + runMetres, 0),
    3,
  );
  return [
    {
      what: 'profile',
      sum: [
        ...runs.map((figures) => ({ code: 'material.profile.sum.run', figures })),
        { code: 'material.profile.sum.read', figures: {} },
      ],
      rate: { value: 1, unit: 'metre' },
      mark: 'G',
      source: 'geometry',
      amount,
      unit: 'metre',
      buy: wholeLength(amount, system),
      buyUnit: 'metre',
    },
  ];
}

/** Each free edge by the name of its doorway or wall, with its length. */
function freeRuns({ spec, layout }: Laid): readonly { readonly place: string; readonly runMetres: number }[] {
  const lengths = new Map<string, number>();
  for (const { edge, length } of edgeSides(layout.frame)) {
    const name = edge.id.replace(/(?::[^:]*|\.\d+)$/, '');
    const goesOn = spec.doorways.some((one) => one.name === name && one.beyond === 'tile');
    if (FREE.includes(edge.meets) && !goesOn) lengths.set(name, (lengths.get(name) ?? 0) + length);
  }
  return [...lengths].map(([place, length]) => ({
    place,
    runMetres: rounded(length / (1000 * TICKS_PER_MM), 3),
  }));
}
