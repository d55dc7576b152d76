import type { PatternSpec, TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern } from './Pattern.ts';
import { running } from './running.ts';
import { straight } from './straight.ts';

type Maker = (tile: TileSpec, joint: Ticks, spec: PatternSpec) => Pattern;

/** One line a pattern: its name in the job file and the file that makes it. */
const makers: Readonly<Record<PatternSpec['name'], Maker>> = { straight, running };

/**
 * The pattern a job asks for, with its tile, as pure repetition in the pattern's own frame; all in ticks.
 * A tile that the job does not list is an error of the caller: reading the job refuses it.
 *
 * @example makePattern({ name: 'straight', tile: 'field' }, [{ key: 'field', length: 600, width: 300 }], 10).module //=> [610, 310]
 */
export function makePattern(spec: PatternSpec, tiles: readonly TileSpec[], joint: Ticks): Pattern {
  const tile = tiles.find(({ key }) => key === spec.tile);
  if (!tile)
    throw new RangeError(`pattern: no tile '${spec.tile}', expected one of ${tiles.map((t) => t.key)}`);
  return makers[spec.name](tile, joint, spec);
}
