import type { Fault } from '../Layout.ts';

export function faultsOf(): Fault[] {
  return [];
}
