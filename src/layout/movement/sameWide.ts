import type { WideJoint } from './WideJoint.ts';

/** Whether two lists of wide joints are one, whatever their order. */
export function sameWide(one: readonly WideJoint[], other: readonly WideJoint[]): boolean {
  const keys = (wide: readonly WideJoint[]) =>
    wide.map(({ axis, at, extra }) => `${axis} ${at} ${extra}`).sort();
  return keys(one).join() === keys(other).join();
}
