import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { FieldEnds, Solved } from './Border.ts';
import type { FacingSides } from './facingSides.ts';
import { type RepeatAlong, repeatAlong } from './repeatAlong.ts';

/** What a course whose width is open may be. */
export interface OpenCourse {
  /** The two walls that count first, and those that face each other the other way, where there are such. */
  readonly facing: readonly [FacingSides, FacingSides?];
  readonly pattern: Pattern;
  /** The tile's width: the most. */
  readonly most: Ticks;
  /** Thinner than this it is a strip. */
  readonly least: Ticks;
  /** What all other courses take with their joints on each side. */
  readonly others: Ticks;
  readonly step: Ticks;
}

/**
 * The widest a course may be so that the pattern ends alike along both walls of both pairs that face each other, on whole or half tiles, on
 * half tiles, or at least as it ends on the other side; where no width does for both pairs, so for the first of them, else for the
 * other. Both are served where their widths differ by half a saw step at most: the field is then a saw step longer than one of them asks
 * for, and that goes into the joints beside the border. Half tiles may be a saw step short, so that one tile gives two with its kerf.
 * The tile's own width where none does.
 */
export function solveWidth(open: OpenCourse): { readonly width: Ticks; readonly solved: Solved } {
  const ways = open.facing.flatMap((facing) => (facing ? [wayOf(facing, open)] : []));
  const [first, second] = ways as [Way, Way?];
  const both = second && first.widths.flatMap((one) => second.widths.filter(near(one)).map(pairWith(one)))[0];
  const served = both ? ways : ways.filter(({ widths }) => widths.length > 0).slice(0, 1);
  const exact = both ?? served[0]?.widths.slice(0, 1);
  const width = exact ? sawn(exact, served[0]!.repeat!, open) : open.most;
  const main = served[0] ?? first;
  const other = ways.find((way) => way !== main);
  const told = endsOf(main, width, served.includes(main));
  if (!other) return { width, solved: told };
  return { width, solved: { ...told, other: endsOf(other, width, served.includes(other)) } };

  function near(one: number) {
    return (two: number) => Math.abs(one - two) <= open.step / 2;
  }
  function pairWith(one: number) {
    return (two: number): readonly number[] => [one, two];
  }
}

/** One pair of walls with the widths, widest first, at which the pattern ends clean between them. */
interface Way {
  readonly facing: FacingSides;
  readonly repeat: RepeatAlong | null;
  /** From border to border within their joints, were the course of no width. */
  readonly free: Ticks;
  /** What of a joint the last repeat does without. */
  readonly spare: Ticks;
  readonly widths: readonly number[];
}

function wayOf(facing: FacingSides, { pattern, most, least, others }: OpenCourse): Way {
  const repeat = repeatAlong(pattern, facing.across);
  const free = facing.run - 2 * others - 2 * pattern.joint;
  const spare = repeat?.ends === 'whole' ? pattern.joint : 0;
  const widths: number[] = [];
  const widthAt = (repeats: number) => (free - repeats * repeat!.length + spare) / 2;
  if (repeat)
    for (let n = Math.ceil((free - 2 * most + spare) / repeat.length); widthAt(n) >= least; n++)
      widths.push(widthAt(n));
  return { facing, repeat, free, spare, widths };
}

/** The width as it is sawn: whole tiles take the narrowest that serves, so that none of them is sawn; halves a saw step more. */
function sawn(exact: readonly number[], { ends }: RepeatAlong, { step, most }: OpenCourse): Ticks {
  const up = Math.ceil(Math.max(...exact) / step - 1e-9) * step;
  return ends === 'whole' || up > most ? Math.round(Math.min(...exact)) : up;
}

function endsOf({ facing: { walls }, repeat, free, spare }: Way, width: Ticks, clean: boolean): FieldEnds {
  const run = Math.round(free - 2 * width);
  if (!repeat) return { ends: 'none', walls, run, repeats: 0 };
  if (clean) return { ends: repeat.ends, walls, run, repeats: Math.round((run + spare) / repeat.length) };
  const repeats = Math.floor((run + spare) / repeat.length);
  return { ends: 'none', walls, run, repeats, over: Math.round(run + spare - repeats * repeat.length) };
}
