import type { TileSpec } from '../../job/Job.ts';
import { onGrid, type System, type Ticks } from '../../measure/index.ts';
import {
  EDGE_WARPAGE,
  edgeWarpage,
  inches,
  JOINT_LEAST,
  JOINT_PER_SPREAD,
  LIPPAGE,
  type Limit,
  lippageLimit,
} from '../../trade/index.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** Rules that hold for a tile and its joint on any surface: joint against spread, least joint, bow, lippage. */
export function tileLimits(tile: TileSpec, joint: Ticks, system: System): readonly Limit[] {
  // Of the spread as it is printed, so that three times what a reader sees is the joint that he sees.
  const spread = onGrid(tile.spread, system, {});
  const bySpread = JOINT_PER_SPREAD.value * spread;
  const least = inches(JOINT_LEAST.value);
  const warpage = edgeWarpage(Math.max(tile.length, tile.width), tile.edge);
  const common = { unit: 'ticks', tile: tile.key };
  return [
    limitOf(JOINT_PER_SPREAD, {
      ...common,
      rule: 'joint.spread',
      bound: 'least',
      found: joint,
      limit: bySpread,
      pass: joint >= bySpread,
      ...unless(joint >= bySpread, {
        code: 'limit.joint.spread.pass',
        figures: { joint: Math.max(bySpread, least), spread, spreadMost: Math.floor(joint / 3) },
      }),
    }),
    limitOf(JOINT_LEAST, {
      ...common,
      rule: 'joint.absolute',
      bound: 'least',
      found: joint,
      limit: least,
      pass: joint >= least,
      ...unless(joint >= least, { code: 'limit.joint.absolute.pass', figures: { joint: least } }),
    }),
    limitOf(EDGE_WARPAGE, {
      ...common,
      rule: 'bow',
      bound: 'most',
      found: tile.bow,
      limit: warpage,
      pass: tile.bow <= warpage,
      ...unless(tile.bow <= warpage, { code: 'limit.bow.pass', figures: { bow: warpage } }),
    }),
    limitOf(LIPPAGE, {
      ...common,
      rule: 'lippage',
      bound: 'most',
      found: ON_SITE,
      limit: lippageLimit(joint, tile.bow),
      pass: true,
    }),
  ];
}

function unless(
  pass: boolean,
  wouldPass: NonNullable<Limit['wouldPass']>,
): { readonly wouldPass?: NonNullable<Limit['wouldPass']> } {
  return pass ? {} : { wouldPass };
}
