import type { PatternName, PatternSpec, TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import { basketweave } from './basketweave.ts';
import { checkered } from './checkered.ts';
import { chevron } from './chevron.ts';
import { fourSizes } from './fourSizes.ts';
import { herringbone } from './herringbone.ts';
import { hexagon } from './hexagon.ts';
import { octagonAndDot } from './octagonAndDot.ts';
import { own } from './own.ts';
import type { Pattern } from './Pattern.ts';
import { pennyRound } from './pennyRound.ts';
import { rhombus } from './rhombus.ts';
import { running } from './running.ts';
import { straight } from './straight.ts';
import { threeSizes } from './threeSizes.ts';
import { twoSquares } from './twoSquares.ts';
import { windmill } from './windmill.ts';

type Maker = (tiles: readonly TileSpec[], joint: Ticks, spec: PatternSpec) => Pattern;

/** One line a pattern: its name in the job file and the file that makes it. */
const makers: Readonly<Record<PatternName, Maker>> = {
  straight: ([tile], joint) => straight(tile!, joint),
  running: ([tile], joint, spec) => running(tile!, joint, spec),
  herringbone: ([tile], joint, { group }) => herringbone(tile!, joint, group),
  basketweave: ([tile], joint, { group }) => basketweave(tile!, joint, group),
  twoSquares: ([large, small], joint) => twoSquares(large!, small!, joint),
  windmill: ([long, middle], joint) => windmill(long!, middle!, joint),
  threeSizes,
  fourSizes,
  hexagon: ([tile], joint) => hexagon(tile!, joint),
  octagonAndDot: ([octagon, dot], joint) => octagonAndDot(octagon!, dot!, joint),
  rhombus: ([tile], joint) => rhombus(tile!, joint),
  chevron: ([rising, falling], joint) => chevron(rising!, falling!, joint),
  pennyRound: ([tile], joint) => pennyRound(tile!, joint),
  own: (tiles, joint, { own: repeat }) => own(tiles, joint, repeat!),
};

/**
 * The pattern a job asks for, with its tiles, as pure repetition in the pattern's own frame; all in ticks.
 * A tile that the job does not list is an error of the caller: reading the job refuses it.
 *
 * @example makePattern({ name: 'straight', tile: 'field' }, [{ key: 'field', length: 600, width: 300 }], 10).module //=> [610, 310]
 */
export function makePattern(spec: PatternSpec, tiles: readonly TileSpec[], joint: Ticks): Pattern {
  const pattern = makePlain(spec, tiles, joint);
  return spec.checker ? checkered(pattern, spec.checker) : pattern;
}

/** The same in one colour: where a pattern starts does not hang on its colours. */
export function makePlain(spec: PatternSpec, tiles: readonly TileSpec[], joint: Ticks): Pattern {
  const own = (spec.tiles ?? [spec.tile]).map((key) => {
    const tile = tiles.find((one) => one.key === key);
    if (!tile) throw new RangeError(`pattern: no tile '${key}', expected one of ${tiles.map((t) => t.key)}`);
    return tile;
  });
  return makers[spec.name](own, joint, spec);
}
