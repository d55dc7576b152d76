import { describe, expect, test } from 'vitest';
import { repeatLines } from '../../src/sheets/repeatLines.ts';
import { demos, words } from './demos.ts';

/** Ticks of a length as print tells it: `4 ft 8 15/16 in`, `2121 mm`. */
function ticksOf(text: string): number {
  const mm = /^([\d.]+) mm$/.exec(text);
  if (mm) return Number(mm[1]) * 320;
  const [, feet = '0', whole = '0', over = '0', under = '1'] =
    /^(?:(\d+) ft ?)?(?:(\d+)(?= |$))?(?: ?(\d+)\/(\d+))?(?: in)?$/.exec(text)!;
  return (12 * Number(feet) + Number(whole) + Number(over) / Number(under)) * 8128;
}

const noCourses = demos.filter(({ packet }) => packet.surfaces[0]!.chalk.guide);

describe.each(noCourses)(
  'the tape check of the pattern of $slug, which has no rows',
  ({ packet, sheets }) => {
    const [surface] = packet.surfaces;
    const { border } = sheets.find(({ template }) => template === 'set-out')!.data as { border: string[] };
    const line = border.find((one) => one.startsWith('Check by tape'))!;
    const checks = [...line.matchAll(/, (?:(\d+)(?: courses)? on|the next): ([^;]+?)(?=;|\.$)/g)];

    test('is told both ways, on one line of the set-out', () => expect(checks.length).toBe(2));

    test('counts courses as the story pole does, where it has more of them than such tiles', () => {
      const { poles = [] } = surface!.chalk;
      for (const [said, count, sum] of checks.filter(([one]) => one.includes('courses'))) {
        const modules = poles.map(({ module }) => Math.abs(Number(count) * module - ticksOf(sum!)));
        expect(Math.min(...modules), said).toBeLessThanOrEqual(packet.rounding.step / 2 + 4);
      }
      const isHexagon = surface!.pattern.name === 'hexagon';
      expect(checks.some(([one]) => one.includes('courses'))).toBe(isHexagon);
    });

    test('leads from each tile to one that lies alike, so many repeats off in a straight line', () => {
      const { pieces } = surface!;
      const whole = pieces.filter((one) => one.whole && !one.border);
      for (const [, count = '1', sum] of checks) {
        const far = ticksOf(sum!);
        // Of tiles that lie alike in one line some lie just so far apart, and as many between them as are told.
        const pairs = whole.flatMap((one) =>
          whole.filter(({ fullTile, tile, quarter }) => {
            const [dx, dy] = [fullTile[0]![0] - one.fullTile[0]![0], fullTile[0]![1] - one.fullTile[0]![1]];
            const alike = tile === one.tile && quarter === one.quarter;
            return alike && Math.abs(Math.hypot(dx, dy) - far) <= packet.rounding.step / 2 + 4;
          }),
        );
        expect(pairs.length, `${count} on: ${sum}`).toBeGreaterThan(0);
      }
    });
  },
);

test('a further line says beside which tile it lies, as the line through the crossing beside the first', () => {
  const { packet, sheets } = demos.find(({ slug }) => slug === 'sedge-washroom')!;
  const { chalk, pieces } = packet.surfaces[0]!;
  const { middle } = sheets.find(({ template }) => template === 'set-out')!.data as { middle: string };
  const [, line, id] = /Line (\d+) lies beside ([KLMN]\d+-\d+) as line 2 does beside tile K1-1\./.exec(
    middle,
  )!;
  const left = (name: string) => Math.min(...pieces.find((one) => one.id === name)!.fullTile.map(([x]) => x));
  const at = (name: string) =>
    [...chalk.lines, ...(chalk.further ?? [])].find((one) => one.name === name)!.from[0];
  expect(left(id!) - at(line!)).toBeCloseTo(left('K1-1') - at('2'), -1);
});

test('a floor in courses has row sums and no such line', () => {
  const { packet } = demos.find(({ slug }) => slug === 'rowan-bath')!;
  const context = { packet, say: words.say('en') } as unknown as Parameters<typeof repeatLines>[0];
  expect(repeatLines(context, packet.surfaces[0]!)).toEqual([]);
});
