import { describe, expect, test } from 'vitest';
import { drawPlan, drawZone } from '../../src/drawing/index.ts';
import { demos } from '../sheets/demos.ts';
import { say } from './fixture.ts';
import { apartMm, leaderFaults, leadersAlong, leadersIn } from './leadersIn.ts';

const surfaces = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.map((surface) => [slug, packet, surface] as const),
);
const upright = { widthMm: 175, heightMm: 190 };
const lying = { widthMm: 240, heightMm: 110 };

describe.each(surfaces)('leaders in the plans of %s', (_, packet, surface) => {
  const options = { id: 'one', label: 'one', ...packet.spec.print, say };

  test.each([upright, lying])(
    'of its zones keep apart, run along no line, pass no name but their own and end at it: %o',
    (space) => {
      for (const zone of surface.zones) {
        const { svg } = drawZone(surface, zone, { ...options, space });
        expect(leaderFaults(svg)).toEqual([]);
        expect(leadersAlong(svg)).toEqual([]);
      }
    },
  );

  test.each([true, false])('of its layout do so too, with the numbers of cuts: %s', (numbers) => {
    const { svg } = drawPlan(surface, { ...options, space: upright, numbers });
    expect(leaderFaults(svg)).toEqual([]);
    expect(leadersAlong(svg)).toEqual([]);
  });
});

describe('the judge of leaders', () => {
  const dot = (x: number, y: number) =>
    `<path d="M${x + 0.5},${y}A0.5,0.5,0,1,0,${x - 0.5},${y}A0.5,0.5,0,1,0,${x + 0.5},${y}Z" fill="#000"/>`;
  const lines = (...d: readonly string[]) =>
    `<path d="${d.join('')}" fill="none" stroke="#000" stroke-width="0.18"/>`;
  const name = (x: number, y: number, words: string) =>
    `<text x="${x}" y="${y}" text-anchor="middle" font-size="3">${words}</text>`;
  const names = name(10, 10, 'K1-1') + name(30, 10, 'K1-2');

  test('finds a leader by its dot', () => {
    const svg = lines('M10,30L10,11', 'M40,30L40,11') + dot(10, 30);
    expect(leadersIn(svg)).toEqual([[[10, 30], [10, 11]]]); // biome-ignore format: a line on a line
  });

  test('has nothing against leaders side by side', () => {
    expect(leaderFaults(lines('M10,30L10,11', 'M30,30L30,11') + dot(10, 30) + dot(30, 30) + names)).toEqual(
      [],
    );
  });

  test('tells one that runs along a wall, and has nothing against one that crosses it', () => {
    const wall = '<path d="M11,0L11,60" fill="none" stroke="#000" stroke-width="0.7"/>';
    const along = lines('M10.5,30L10.5,11') + dot(10.5, 30);
    expect(leadersAlong(along + wall)).toHaveLength(1);
    expect(leadersAlong(lines('M5,30L17,11') + dot(5, 30) + wall)).toEqual([]);
  });

  test('tells two that cross, and how far others are apart', () => {
    const svg = lines('M30,30L10,11', 'M10,30L30,11') + dot(10, 30) + dot(30, 30) + names;
    expect(leaderFaults(svg)).toEqual(['leaders of K1-1 and K1-2 are 0.0 mm apart']);
    expect(apartMm([[0, 0], [10, 0]], [[4, 3], [4, 9]])).toBe(3); // biome-ignore format: two lines on a line
  });

  test('tells one that passes another name, and one that ends at none', () => {
    expect(leaderFaults(lines('M45,9L14,9') + dot(45, 9) + names)).toEqual([
      'the leader of K1-1 passes K1-2',
    ]);
    expect(leaderFaults(lines('M10,30L10,20') + dot(10, 30) + names)).toEqual([
      'a leader ends 10.0 mm from K1-1',
    ]);
  });
});
