import type { Packet } from '../packet/Packet.ts';

/** Whether tile slides under the casing or jamb of any doorway: where all stay as they are, nothing is undercut. */
export function isUndercut({ spec }: Packet): boolean {
  return spec.surfaces.some(({ doorways }) =>
    doorways.some(({ left, right }) => [left, right].some(({ kind }) => kind === 'undercut')),
  );
}
