import type { Cuts } from '../cuts/Cut.ts';
import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import { alikeClasses } from './alikeClasses.ts';
import { cutClasses } from './cutClasses.ts';
import { fewestTiles } from './fewestTiles.ts';
import { shareTiles } from './shareTiles.ts';
import { tileRules } from './tileRules.ts';

/** How many tiles lay a surface at the fewest, with the number that no plan goes below; no breakage, no spares. */
export function countTiles(
  job: Job,
  layout: Layout,
  cuts: Cuts,
): { readonly tiles: number; readonly bound: number } {
  const whole = layout.pieces.filter((piece) => piece.whole).length;
  const counts = job.tiles.map((tile) => {
    const classes = cutClasses(tile, [layout], [cuts]);
    const rules = tileRules(classes, { kerf: job.saw.kerf, narrowest: job.offcuts.narrowest });
    const { tiles, proof } = fewestTiles(rules);
    return { tiles: tiles.length, bound: proof.bound };
  });
  const sum = (of: (one: { tiles: number; bound: number }) => number) =>
    counts.reduce((all, one) => all + of(one), whole);
  return { tiles: sum(({ tiles }) => tiles), bound: sum(({ bound }) => bound) };
}

/** The same by the rule of the largest piece first, without a word of how each is sawn: never fewer than needed, seldom more. */
export function countTilesFast(job: Job, layout: Layout): number {
  const whole = layout.pieces.filter((piece) => piece.whole).length;
  return job.tiles.reduce((sum, tile) => {
    const classes = alikeClasses(tile, layout);
    const rules = tileRules(classes, { kerf: job.saw.kerf, narrowest: job.offcuts.narrowest });
    const counts = classes.map(({ pieces }) => pieces.length);
    return sum + shareTiles(rules, counts).length;
  }, whole);
}
