import type { TileSpec } from '../../job/Job.ts';
import { longestSide } from '../../job/longestSide.ts';
import type { Ticks } from '../../measure/index.ts';
import type { OtherDrain } from '../../room/Falls.ts';
import { CONE_TILE, FALL, fall, followsCone, inches, type Limit, WET_SLIP } from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** What holds where a floor gets wet: the friction of each tile's face, the fall to a drain, tile against the cone of a fall to one point. */
export function wetLimits({ spec, tiles, layout }: Laid, joint: Ticks): readonly Limit[] {
  const { falls } = layout.frame;
  const slip = spec.exposure === 'wet' || spec.exposure === 'outside' ? tiles.map(slipLimit(spec)) : [];
  if (!falls) return slip;
  const run = Math.max(...falls.planes.map((plane) => plane.run));
  const fallen = limitOf(FALL, {
    rule: 'fall',
    bound: 'least',
    surface: spec.name,
    found: ON_SITE,
    limit: fall(run),
    unit: 'ticks',
    pass: true,
    wouldPass: {
      code: falls.planes.length > 1 ? 'limit.fall.planes' : 'limit.fall.plane',
      figures: { drain: falls.drain, run },
    },
  });
  const others = (falls.others ?? []).map((other) =>
    otherDrainLimit(spec.name, falls.drain, other, fall(run)),
  );
  const cone = falls.folds.length > 0 ? tiles.map((tile) => coneLimit(spec.name, tile, joint, falls)) : [];
  return [...slip, fallen, ...others, ...cone];
}

function slipLimit({ name, exposure }: Laid['spec']) {
  const limit = exposure === 'outside' ? WET_SLIP.value.outside : WET_SLIP.value.level;
  return ({ key, friction }: TileSpec): Limit =>
    limitOf(WET_SLIP, {
      rule: 'slip',
      bound: 'least',
      surface: name,
      tile: key,
      found: friction ?? ON_SITE,
      limit,
      unit: 'friction',
      pass: friction === undefined || friction >= limit,
      ...(friction !== undefined && friction < limit
        ? { wouldPass: { code: 'limit.slip.pass', figures: { leastCount: limit } } }
        : {}),
    });
}

/** That water does not run to a drain that the floor does not fall to, and how much higher the base lies there, where that is known. */
function otherDrainLimit(
  surface: string,
  drain: string,
  { name: other, share }: OtherDrain,
  high: Ticks,
): Limit {
  const rise = share === undefined ? 0 : Math.round(high * share);
  return limitOf(FALL, {
    rule: 'fall.other',
    surface,
    found: ON_SITE,
    limit: ON_SITE,
    unit: 'ticks',
    pass: true,
    wouldPass: {
      code: 'limit.fall.other.pass',
      figures: { drain, other, rise, risen: rise > 0 ? 'yes' : 'no' },
    },
  });
}

function coneLimit(
  surface: string,
  tile: TileSpec,
  joint: Ticks,
  { folds, cut }: NonNullable<Laid['layout']['frame']['falls']>,
): Limit {
  const side = longestSide([tile], joint);
  const pass = followsCone(side);
  const figures = { foldCount: folds.length };
  const about = { surface, tile: tile.key, unit: 'ticks' } as const;
  if (cut && !pass) {
    const check = { found: ON_SITE, limit: ON_SITE, pass: true };
    return limitOf(CONE_TILE, {
      ...about,
      ...check,
      rule: 'cone.cut',
      wouldPass: { code: 'limit.cone.cut.pass', figures },
    });
  }
  return limitOf(CONE_TILE, {
    ...about,
    rule: 'cone',
    bound: 'most',
    found: side,
    // Sides of that length are too long already.
    limit: inches(CONE_TILE.value.from) - 1,
    pass,
    ...(pass ? {} : { wouldPass: { code: 'limit.cone.pass', figures } }),
  });
}
