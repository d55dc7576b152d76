import type { Fact } from './Fact.ts';

/** How a piece is sawn, as far as it matters for breaking: right across, to a point, a notch, a U, a hole, along a curve, or otherwise. */
export type SawnAs = 'straight' | 'point' | 'notch' | 'u' | 'hole' | 'curve' | 'odd';

/** Share of the pieces sawn so that break at the saw or on the way to the wall: thin ends and inner corners break soonest. */
export const BREAKAGE: Fact<Readonly<Record<SawnAs, number>>> = {
  value: { straight: 0.03, point: 0.05, notch: 0.1, u: 0.15, hole: 0.1, curve: 0.1, odd: 0.15 },
  mark: 'P',
  source: 'practice',
};

/**
 * Pieces that are likely to break: of each way of sawing its share, not rounded.
 *
 * @param counts pieces by how they are sawn; `shares` parts of them, 0 to 1.
 * @example breaking({ straight: 40, notch: 2 }, { straight: 0.03, point: 0.05, notch: 0.1, u: 0.15, hole: 0.1, curve: 0.1, odd: 0.15 }) //=> 1.4
 */
export function breaking(
  counts: Readonly<Partial<Record<SawnAs, number>>>,
  shares: Readonly<Record<SawnAs, number>>,
): number {
  const ways = Object.keys(shares) as SawnAs[];
  return ways.reduce((sum, way) => sum + (counts[way] ?? 0) * shares[way], 0);
}
