import { describe, expect, it } from 'vitest';
import { compassRule } from '../../src/room/compassRule.ts';

type Row = readonly [
  length: number,
  latitude: number,
  departure: number,
  adjustedLat: number,
  adjustedDep: number,
];

const adjusted = (rows: readonly Row[]) =>
  compassRule(
    rows.map(([, latitude, departure]) => [departure, latitude]),
    rows.map(([length]) => length),
  );
const column = (rows: readonly Row[], at: 3 | 4) => rows.map((row) => row[at]);

describe('the compass rule', () => {
  // Source: J. Mahun, Open Access Surveying Library (jerrymahun.com), Traverse Adjustment, example 1.
  const fourSides: readonly Row[] = [
    [379.25, -306.82, 222.918, -306.862, 222.954],
    [408.9, -103.152, -395.675, -103.197, -395.637],
    [298.65, 288.842, -75.909, 288.809, -75.881],
    [276.55, 121.28, 248.538, 121.25, 248.564],
  ];

  it('gives the published adjusted latitudes and departures to their last digit', () => {
    const { legs, misclosure } = adjusted(fourSides);
    expect(legs.map(([, lat]) => Number(lat.toFixed(3)))).toEqual(column(fourSides, 3));
    expect(legs.map(([dep]) => Number(dep.toFixed(3)))).toEqual(column(fourSides, 4));
    expect([misclosure[1].toFixed(3), misclosure[0].toFixed(3)]).toEqual(['0.150', '-0.128']);
  });

  // Source: J. Mahun, as above, example 2. Seen of it: lengths, closure (0.157 in 2388.31) and adjusted sides; its unadjusted ones are
  // not, so they are worked backwards: the misclosure of that size at which all four sides get their own lengths back.
  const sameSite: readonly (readonly [length: number, adjustedLat: number, adjustedDep: number])[] = [
    [639.15, -436.631, -466.761],
    [523.69, 523.715, -0.023],
    [409.54, -234.64, -335.663],
    [815.93, 147.556, 802.447],
  ];

  it('gives back the published sides of a second walk, whose misclosure is known by its size alone', () => {
    const lengths = sameSite.map(([length]) => length);
    const round = lengths.reduce((sum, length) => sum + length, 0);
    const unadjusted = (lat: number, dep: number) =>
      sameSite.map(([length, adjustedLat, adjustedDep]): readonly [number, number] => [
        adjustedDep + (dep * length) / round,
        adjustedLat + (lat * length) / round,
      ]);
    const walks = Array.from({ length: 3600 }, (_, i) => (i * Math.PI) / 1800).map((turn) =>
      unadjusted(0.157 * Math.cos(turn), 0.157 * Math.sin(turn)),
    );
    const farthestOff = (walk: readonly (readonly [number, number])[]) =>
      Math.max(...walk.map(([dep, lat], i) => Math.abs(Math.hypot(dep, lat) - lengths[i]!)));
    const walk = walks.reduce((best, next) => (farthestOff(next) < farthestOff(best) ? next : best));
    expect(farthestOff(walk)).toBeLessThan(0.001);
    const thousandths = walk.map(([dep, lat]): [number, number] => [
      Math.round(dep * 1000) / 1000,
      Math.round(lat * 1000) / 1000,
    ]);
    const { legs, misclosure } = compassRule(thousandths, lengths);
    // Sides worked backwards are rounded to 0.001 before they are adjusted, so a last digit may come out one off.
    for (const [i, [, lat, dep]] of sameSite.entries()) {
      expect(Math.abs(legs[i]![1] - lat)).toBeLessThan(0.0011);
      expect(Math.abs(legs[i]![0] - dep)).toBeLessThan(0.0011);
    }
    expect(Math.abs(Math.hypot(...misclosure) - 0.157)).toBeLessThan(0.0011);
  });

  // Source: a public exercise of four sides, Compass Rule (Scribd, document 493615208); its last departure is cut off there and is
  // worked out from length and bearing, 68.00 at N 38 W.
  const exercise: readonly (readonly [
    length: number,
    lat: number,
    dep: number,
    adjustedLat: string,
    adjustedDep: string,
  ])[] = [
    [80.4, 19.451, 78.012, '19.3653', '78.1055'],
    [46.3, -37.457, 27.214, '-37.5063', '27.2678'],
    [72.8, -35.294, -63.672, '-35.3716', '-63.5874'],
    [68, 53.585, -68 * Math.sin((38 * Math.PI) / 180), '53.5126', ''],
  ];

  it('gives the printed latitudes and departures of a public exercise to their last digit', () => {
    const { legs, misclosure } = compassRule(
      exercise.map(([, lat, dep]) => [dep, lat]),
      exercise.map(([length]) => length),
    );
    expect([misclosure[1].toFixed(3), misclosure[0].toFixed(3)]).toEqual(['0.285', '-0.311']);
    expect(legs.map(([, lat]) => lat.toFixed(4))).toEqual(exercise.map(([, , , lat]) => lat));
    expect(legs.slice(0, 3).map(([dep]) => dep.toFixed(4))).toEqual(
      exercise.slice(0, 3).map(([, , , , dep]) => dep),
    );
  });

  // Source: Purdue University, ASM 215, balancing a traverse of five sides. The page rounds its corrections so that
  // they sum, hence 0.01. Bearings of the sides from memory; they give the page's misclosure and walk.
  const bearings: readonly (readonly [length: number, azimuthDeg: number, lat: number, dep: number])[] = [
    [285.1, 26 + 10 / 60, 255.96, 125.66],
    [610.45, 180 - 75 - 25 / 60, -153.52, 590.65],
    [720.48, 180 + 15 + 30 / 60, -694.07, -192.69],
    [203, 360 - 1 - 42 / 60, 202.97, -6.07],
    [647.02, 360 - 53 - 6 / 60, 388.66, -517.55],
  ];

  it('gives the published balanced sides of a walk round five corners to 0.01', () => {
    const radians = Math.PI / 180;
    // The page's latitudes and departures are rounded to 0.01 before they are summed.
    const cents = (value: number) => Math.round(value * 100) / 100;
    const { legs, misclosure } = compassRule(
      bearings.map(([length, azimuth]) => [
        cents(length * Math.sin(azimuth * radians)),
        cents(length * Math.cos(azimuth * radians)),
      ]),
      bearings.map(([length]) => length),
    );
    expect([misclosure[1].toFixed(2), misclosure[0].toFixed(2)]).toEqual(['-0.71', '0.53']);
    for (const [i, [, , lat, dep]] of bearings.entries()) {
      expect(Math.abs(legs[i]![1] - lat)).toBeLessThan(0.0101);
      expect(Math.abs(legs[i]![0] - dep)).toBeLessThan(0.0101);
    }
  });
});
