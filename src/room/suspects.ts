import type { SurfaceSpec } from '../job/Job.ts';
import type { System, Ticks } from '../measure/index.ts';
import type { Doubt } from './findSuspects.ts';
import type { Observation } from './observations.ts';
import type { SlipKind, Suspect } from './Room.ts';
import type { Slip } from './slips.ts';

/** Slips that are made with a tape again and again: a foot or an inch misread, the tape burnt at ten inches. Common practice, no source. */
const usual: Readonly<Record<System, readonly (readonly [SlipKind, Ticks])[]>> = {
  inches: [
    ['foot', 97_536],
    ['tenInches', 81_280],
    ['inch', 8_128],
  ],
  mm: [
    ['metre', 320_000],
    ['decimetre', 32_000],
    ['centimetre', 3_200],
  ],
};

/**
 * The usual slip that one is likely to be, and by how many standard deviations it misses that; none where the slip is not known
 * well enough to tell.
 */
function usualSlip(
  { by, sd }: Slip,
  system: System,
): { readonly kind: SlipKind; readonly off: number } | undefined {
  return usual[system]
    .filter(([, size]) => 4 * sd <= size)
    .map(([kind, size]) => ({ kind, off: Math.abs(Math.abs(by) - size) / sd }))
    .filter(({ off }) => off <= 2)
    .sort((a, b) => a.off - b.off)[0];
}

/** A wall whose reading is that of the wall beside it. */
function asNeighbour({ at }: Slip, seen: readonly Observation[]): SlipKind | undefined {
  const walls = seen.filter(({ kind }) => kind === 'wall');
  const one = walls[at];
  if (!one) return undefined;
  const beside = [walls[(at + 1) % walls.length]!, walls[(at + walls.length - 1) % walls.length]!];
  return beside.some((other) => Math.abs(other.mean - one.mean) <= 2 * one.sd) ? 'asNeighbour' : undefined;
}

/** One slip an observation, the likeliest; `which` is null where several of its readings are as likely. */
function byId(doubt: Doubt): Slip[] {
  const best = doubt.filter((slip, i) => doubt.findIndex(({ at }) => at === slip.at) === i);
  return best.map((slip) => {
    const alike = doubt.filter(({ at }) => at === slip.at);
    return alike.length > 1 ? { ...slip, which: null } : slip;
  });
}

/** A doubt as it is told: usual slips first, then those that explain the readings best. */
export function suspectOf(doubt: Doubt, seen: readonly Observation[], system: System): Suspect {
  const rank = (slip: Slip) => usualSlip(slip, system)?.off ?? 3;
  const slips = byId(doubt)
    .map((slip, i) => ({ slip, i }))
    .sort((a, b) => rank(a.slip) - rank(b.slip) || a.i - b.i)
    .map(({ slip }) => slip);
  const first = slips[0]!;
  const kind = usualSlip(first, system)?.kind ?? (slips.length === 1 ? asNeighbour(first, seen) : undefined);
  return {
    ids: slips.map(({ at }) => seen[at]!.id),
    which: slips.map(({ which }) => which),
    slip: Math.round(first.by),
    verdict: slips.length > 1 ? 'tied' : 'named',
    ...(kind ? { kind } : {}),
  };
}

/** Neighbouring walls that seem to bear each other's reading; several pairs where each would do. */
export function exchangedSuspects(pairs: readonly number[], surface: SurfaceSpec): Suspect[] {
  const { walls } = surface;
  return pairs.map((i) => {
    const [one, other] = [walls[i]!, walls[(i + 1) % walls.length]!];
    return {
      ids: [one.id, other.id],
      which: [null, null],
      slip: one.readings[0]! - other.readings[0]!,
      verdict: pairs.length > 1 ? 'tied' : 'named',
      kind: 'exchanged',
    };
  });
}
