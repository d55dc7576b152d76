import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Ring } from '../../src/geometry/index.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeTilePlans } from '../../src/tiles/makeTilePlans.ts';
import type { CutTile, TilePlan } from '../../src/tiles/TilePlan.ts';
import { inch } from '../cuts/support/inches.ts';
import { demos } from '../sheets/demos.ts';
import { layOut } from '../support/layOut.ts';
import { demoFloors } from './support/demoFloors.ts';
import { familyRoom } from './support/familyRoom.ts';
import { judgePile } from './support/judgePile.ts';
import { canSaw, judgePlan, type Rules, turnedBy } from './support/judgePlan.ts';
import { judgeSum } from './support/judgePrices.ts';
import { rulesOf } from './support/rulesOf.ts';

/** The tiles that are sawn, of all kinds, in the order in which the first of their pieces is set. */
function sawn({ surfaces, tiles }: Packet): string[] {
  const tileOf = new Map(
    Object.values(tiles).flatMap(({ from }) =>
      from.flatMap(({ tile, pieces }) => pieces.map(({ piece }) => [piece, tile] as const)),
    ),
  );
  const named = (name: string, id: string) => (surfaces.length > 1 ? `${name}:${id}` : id);
  const set = surfaces.flatMap(({ name, zones }) =>
    zones.flatMap(({ pieces }) => pieces.map((id) => named(name, id))),
  );
  return [...new Set(set.flatMap((piece) => tileOf.get(piece) ?? []))];
}

describe.each(demos)('the plans of $slug', ({ packet }) => {
  const plans = Object.values(packet.tiles);

  test('number the tiles that are sawn as they are needed, whatever kind they are', () => {
    const all = sawn(packet);
    expect(all).toEqual(all.map((_, i) => `T${i + 1}`));
    expect(all).toHaveLength(plans.reduce((sum, { from }) => sum + from.length, 0));
  });

  test.each(plans)('for the tile $tile stand before the judges', (whole) => {
    const { layout, cuts, plan } = demoFloors(packet, whole);
    const numbers = sawn(packet).filter((tile) => plan.from.some((one) => one.tile === tile));
    expect(judgePlan(layout, cuts, plan, rulesOf(packet.spec, plan.tile))).toEqual([]);
    expect([...judgeSum(plan), ...judgePile(layout, plan, numbers)]).toEqual([]);
  });
});

describe('the judges find what is wrong with a plan', () => {
  const { job, surface } = familyRoom('half bond', 2);
  const { layout } = layOut(job, surface);
  const cuts = makeCuts(job, layout);
  const plan = makeTilePlans(job, [layout], [cuts]).field!;
  const shared = plan.from.findIndex(({ pieces }) => pieces.length > 1);
  const tile = plan.from[shared]!;
  const withTile = (change: Partial<CutTile>): TilePlan => ({
    ...plan,
    from: plan.from.map((one, i) => (i === shared ? { ...one, ...change } : one)),
  });
  const first = (change: Partial<CutTile['pieces'][number]>) =>
    withTile({ pieces: tile.pieces.map((one, i) => (i === 0 ? { ...one, ...change } : one)) });
  const faultsOf = (spoiled: TilePlan, rules: Partial<Rules> = {}) =>
    judgePlan(layout, cuts, spoiled, { ...rulesOf(job), ...rules }).join('; ');
  const [x, y] = tile.pieces[0]!.at;

  test('which has none of these to begin with', () => {
    expect(shared).toBeGreaterThanOrEqual(0);
    expect(faultsOf(plan)).toBe('');
  });

  test.each([
    ['a piece that is missing', withTile({ pieces: tile.pieces.slice(1) }), 'not each served once'],
    ['a piece that is served twice', withTile({ pieces: [...tile.pieces, tile.pieces[0]!] }), 'not each served once'],
    ['a piece that leaves its tile', first({ at: [x + inch(13), y] }), 'leaves'],
    ['a piece off its factory edge', first({ at: [x, y + 500] }), 'is sawn'],
    ['a piece turned a quarter', first({ turn: ((tile.pieces[0]!.turn + 90) % 360) as 90 }), 'is turned by'],
    ['a bound over the plan', { ...plan, bound: plan.needed + 1 }, 'over'],
  ])('%s', (_what, spoiled, told) => {
    expect(faultsOf(spoiled)).toContain(told);
  }); // biome-ignore format: a fault on a line

  test('a blade that is wider than the plan knows', () => {
    expect(faultsOf(plan, { kerf: inch(6) })).toMatch(/too near.*no saw parts|no saw parts.*too near/);
  });

  test('offcuts that are too narrow to be kept', () => {
    expect(faultsOf(plan, { narrowest: inch(20) })).toContain('is not kept');
  });

  test('a turn that the tile does not allow', () => {
    const turned = plan.from.some(({ pieces }) => pieces.some(({ turn }) => turn !== 0));
    expect(turned).toBe(true);
    expect(faultsOf(plan, { turns: 'none' })).toContain('is turned by 180');
  });

  test('a cut shown as its mirror image', () => {
    const mirrored = cuts.cuts.map((cut) => {
      const most = Math.max(...cut.shape.outer.map(([px]) => px));
      return {
        ...cut,
        shape: { outer: cut.shape.outer.map(([px, py]) => [2 * most - px, py] as const), holes: [] },
      };
    });
    expect(judgePlan(layout, { cuts: mirrored }, plan, rulesOf(job)).join()).toContain('is shown otherwise');
  });

  test('prices that do not add up, and a pile that is another', () => {
    expect(judgeSum({ ...plan, bound: plan.bound - 1 })).not.toEqual([]);
    expect(judgePile(layout, { ...plan, pile: plan.pile! + 1 })).not.toEqual([]);
    const from = plan.from.map((one, i) => ({ ...one, tile: `T${plan.from.length - i}` }));
    expect(judgePile(layout, { ...plan, from })).toEqual(['tiles are not numbered as they are needed']);
  });
});

// By hand: three blades round a middle, each a kerf from the next; whichever line parts two of them runs through the third.
test('a judge holds no set for sawn that lies like the sails of a mill: three blades, none of which comes out first', () => {
  const blade: Ring = [
    [300, -1000],
    [500, -1000],
    [500, 500],
    [300, 500],
  ];
  const sails = [0, 120, 240].map((turn) => blade.map((point) => turnedBy(point, turn)));
  const pairs = [0, 1, 2].map((i) => [sails[i]!, sails[(i + 1) % 3]!]);
  expect(pairs.map((pair) => canSaw(pair, 10))).toEqual([true, true, true]);
  expect(canSaw(sails, 10)).toBe(false);
});
