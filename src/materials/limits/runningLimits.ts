import type { Ticks } from '../../measure/index.ts';
import {
  inches,
  type Limit,
  OFFSET_LIMIT,
  offsetAllowed,
  offsetShare,
  RUNNING_JOINT,
  runningJointMinimum,
} from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { limitOf } from './limitOf.ts';

/** Rules for tile laid in running bond: its offset, and the joint that its bow asks for. */
export function runningLimits(laid: Laid, joint: Ticks): readonly Limit[] {
  const { spec, tile } = laid;
  if (spec.pattern.name !== 'running') return [];
  const longest = Math.max(tile.length, tile.width);
  const least = runningJointMinimum(longest, tile.edge, tile.bow);
  const common = { surface: spec.name, tile: tile.key };
  const offset = offsetLimit(laid, longest);
  if (least === undefined) return [offset];
  const pass = joint >= least;
  const bowless = { joint: least, bow: tile.bow };
  return [
    offset,
    limitOf(RUNNING_JOINT, {
      ...common,
      rule: 'joint.running',
      bound: 'least',
      found: joint,
      limit: least,
      unit: 'ticks',
      pass,
      ...(pass ? {} : { wouldPass: { code: 'limit.joint.running.pass', figures: bowless } }),
    }),
  ];
}

function offsetLimit({ spec, tile }: Laid, longest: Ticks): Limit {
  const [shift, repeat] = shiftOf(spec.pattern.offset, tile.length);
  const { parts, over } = OFFSET_LIMIT.value;
  const within = offsetAllowed(longest, shift, repeat);
  const mockUp = tile.mockUp;
  return limitOf(OFFSET_LIMIT, {
    surface: spec.name,
    tile: tile.key,
    rule: 'offset',
    bound: 'most',
    found: offsetShare(shift, repeat),
    limit: longest > inches(over) ? 1 / parts : 1 / 2,
    unit: 'share',
    pass: within || mockUp !== undefined,
    ...(within ? {} : { wouldPass: passing(mockUp) }),
  });
}

/** A mock-up that was approved lets an offset pass: the sheet then says by whom and when. */
function passing(
  mockUp: { readonly by: string; readonly date: string } | undefined,
): NonNullable<Limit['wouldPass']> {
  return mockUp
    ? { code: 'limit.offset.mockUp', figures: { by: mockUp.by, date: mockUp.date } }
    : { code: 'limit.offset.pass', figures: { offsetShare: 1 / OFFSET_LIMIT.value.parts } };
}

/** An offset as a part of its repeat. A length is a part of the tile, which is what the rule speaks of. */
function shiftOf(offset: Laid['spec']['pattern']['offset'], length: Ticks): readonly [number, number] {
  if (offset === undefined) return [1, 2];
  return 'length' in offset ? [offset.length, length] : [offset.numerator, offset.denominator];
}
