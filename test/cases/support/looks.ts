import type { Job, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Packet } from '../../../src/packet/Packet.ts';
import { mirrored, renumbered } from '../../support/transformSurface.ts';

/** The same job looked at differently: walked from another corner, mirrored and walked the other way, its corners renamed. */
export const looks: Readonly<Record<string, (job: Job) => Job>> = {
  'walked from the second corner': (job) => onEach(job, (surface) => renumbered(surface, 1)),
  'walked from the last corner': (job) =>
    onEach(job, (surface) => renumbered(surface, surface.corners.length - 1)),
  mirrored: (job) =>
    onEach(job, (surface) => {
      const tile = job.tiles.find(({ key }) => key === surface.pattern.tile)!;
      return mirrored(surface, tile.length + job.joint);
    }),
  'with other corner names': (job) => onEach({ ...job, base: renamed(job.base) }, renamed),
};

function onEach(job: Job, change: (surface: SurfaceSpec) => SurfaceSpec): Job {
  return { ...job, surfaces: job.surfaces.map(change) };
}

/** Each letter that stands alone in a name becomes the letter ten further on. */
function renamed<T>(named: T): T {
  const letter = (name: string) => String.fromCharCode(name.charCodeAt(0) + 10);
  const rename = (value: unknown): unknown => {
    if (typeof value === 'string')
      return /^[A-P](-[A-P])?$/.test(value) ? value.replace(/[A-P]/g, letter) : value;
    if (Array.isArray(value)) return value.map(rename);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, rename(one)]));
  };
  return rename(named) as T;
}

/** What must not change with the look: counts, kinds of cut, faults, what to buy, limits. */
export function tallyOf({ surfaces, tiles, limits, materials }: Packet) {
  return {
    surfaces: surfaces.map(({ pieces, left, cuts, faults, start: { chosen } }) => ({
      pieces: pieces.length,
      whole: pieces.filter(({ whole }) => whole).length,
      left: left.length,
      kinds: cuts.flatMap(({ kind, pieces: of }) => of.map(() => kind)).sort(),
      faults: faults.map(({ code, pieces: of }) => `${code} ${of.length}`).sort(),
      smallest: Math.round(chosen.smallestShare * 1000),
      chosen: [chosen.underHalf, chosen.nearFull, chosen.webFaults, chosen.hardCuts, chosen.thin],
    })),
    plans: Object.values(tiles).map(({ needed, spare, keep, buy, boxes }) => [
      needed,
      spare,
      keep,
      buy,
      boxes,
    ]),
    // Runs are told along the first wall and square to it, whichever wall that is.
    limits: limits.map(({ rule, pass }) => `${rule.replace(/\.(along|across)$/, '')} ${pass}`).sort(),
    materials: materials.map(({ what, buy, buyUnit }) => `${what} ${buy} ${buyUnit}`),
  };
}
