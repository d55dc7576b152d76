/** Chance with a seed: the same numbers each time. */
export interface Chance {
  /** Evenly between 0 and 1. */
  readonly even: () => number;
  /** Normally distributed round 0 with standard deviation 1. */
  readonly normal: () => number;
  /** A whole number from 0 up to below n. */
  readonly below: (n: number) => number;
}

/** A generator of 32 bits of state after Weyl, its output mixed; made for tests, not for secrets. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  // Box and Muller's transformation.
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal, below: (n) => Math.floor(even() * n) };
}
