import { describe, expect, test } from 'vitest';
import type { Fault } from '../../src/layout/Layout.ts';
import type { PacketSurface } from '../../src/packet/Packet.ts';
import { alternatives } from '../../src/sheets/alternatives.ts';
import { faultLines } from '../../src/sheets/faultLines.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { demos, words } from './demos.ts';

const { packet } = demos.find(({ slug }) => slug === 'quarry-kitchen')!;
const surface = packet.surfaces[0]!;
const IN = 8128;

describe('two figures in one sentence never read alike', () => {
  const line = (code: Fault['code'], size: number, limit: number, tile: PacketSurface = surface) =>
    faultLines(
      sheetContext(packet, { lang: 'en', say: words.say('en') }),
      { ...tile, faults: [{ code, pieces: ['X1'], figures: { count: 1, size, limit } }] },
      'all',
    )[0];

  // By hand: 1/2 in less 20 ticks is 0.4975 in; 1/8 in and 140 ticks 9/64 in.
  test('of a size and its limit, which are told in finer figures where they would', () => {
    expect(line('web', IN / 2 - 20, IN / 2)).toContain('0.498 in, limit 0.5 in');
    expect(line('web', IN / 4, IN / 2)).toContain('1/4 in, limit 1/2 in');
    expect(line('borderJoint', IN / 8 + 140, IN / 8)).toContain('is 9/64 in, wider than 1/8 in');
  });

  test('of the smallest piece before and after a start was moved, which is then not told', () => {
    const reasons = (before: number, size: number) => {
      const reason = [{ code: 'start.withoutWeb', figures: { beforeCount: 1, afterCount: 0, before, size } }];
      const start = { ...surface.start, chosen: { ...surface.start.chosen, reason } };
      const changed = { ...packet, surfaces: [{ ...surface, start }] };
      return ['en', 'es', 'pt'].map((lang) => {
        const [page] = alternatives.make(sheetContext(changed, { lang, say: words.say(lang) }));
        const { surfaces } = page!.data as { surfaces: { rows: { reasons: string[] }[] }[] };
        return surfaces[0]!.rows[0]!.reasons[0]!;
      });
    };
    for (const told of reasons(50900, 50800 + 10)) expect(told).not.toMatch(/6 1\/4/);
    expect(reasons(40000, 50900)[0]).toContain('the smallest piece is 6 1/4 in, not 4 7/8 in');
  });
});
