import fc from 'fast-check';
import { type PatternCase, patternCasesFrom } from '../pattern/patternCases.ts';
import { type RandomRoom, randomRoom } from './randomRoom.ts';

/** A random room in each of which a pattern lies that is no course of tiles of one size. */
export const patternedRooms: readonly (readonly [string, fc.Arbitrary<RandomRoom>])[] = patternCasesFrom(
  45000,
)
  .filter(([name]) => name !== 'straight' && name !== 'running')
  .map(([name, sizes]) => [name, fc.tuple(randomRoom, sizes).map(([room, sized]) => laidWith(room, sized))]);

function laidWith({ kind, job, surface }: RandomRoom, { spec, tiles, joint }: PatternCase): RandomRoom {
  const { turnedDeg, along } = surface.pattern;
  return {
    kind,
    job: { ...job, tiles, joint },
    surface: { ...surface, pattern: { ...spec, turnedDeg, along } },
  };
}
