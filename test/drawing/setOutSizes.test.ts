import { describe, expect, test } from 'vitest';
import { type Box, grow, segmentMeets } from '../../src/drawing/boxes.ts';
import { drawSetOut } from '../../src/drawing/index.ts';
import type { Mark, Spot, TextMark } from '../../src/drawing/Mark.ts';
import { cornersOf, wallMarks } from '../../src/drawing/roomMarks.ts';
import { runningSizes } from '../../src/drawing/runningSizes.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { takenBy } from '../../src/drawing/takenBy.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { demos } from '../sheets/demos.ts';
import { say } from './fixture.ts';
import { textsIn } from './readSvg.ts';

const floors = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) => [16, 32, 64].map((ratio) => [slug, ratio, packet, surface] as const)),
);

const away = (box: Box, [a, b]: readonly [Spot, Spot]) => {
  for (let by = 0; by < 60; by += 0.25) if (segmentMeets(a, b, grow(box, by))) return by;
  return 60;
};

/** Level and upright arrows of the running sizes, dot to tip. */
function shafts(marks: readonly Mark[]): readonly (readonly [Spot, Spot])[] {
  return marks.flatMap((mark, i) => {
    const before = marks[i - 1];
    if (mark.mark !== 'path' || before?.mark !== 'circle') return [];
    return [mark.steps as unknown as readonly [Spot, Spot]];
  });
}

describe.each(floors)('the running sizes of %s at 1:%i', (_, ratio, packet, surface) => {
  const scale = scaleFor(surface.outline, surface.turn, ratio, [14, 14]);
  const walls = wallMarks(surface, scale);
  const { marks, moved } = runningSizes(surface, scale, packet.spec.print, (more) =>
    takenBy([...walls, ...more], true),
  );
  const words = marks.filter((mark): mark is TextMark => mark.mark === 'text' && mark.text.length > 1);
  const arrows = shafts(marks);

  test('stand on the drawing or under a letter in the table, each one', () => {
    const all = surface.chalk.lines.flatMap((line) => line.marks);
    expect(words.length + moved.length).toBe(all.length);
    expect(arrows.length).toBe(all.length);
  });

  test('are nearer to their own arrow than to any other, and right beside it', () => {
    for (const one of words) {
      const [nearest, next] = arrows.map((arrow) => away(textBox(one), arrow)).sort((a, b) => a - b);
      expect(nearest, one.text).toBeLessThanOrEqual(6.5);
      if (next !== undefined) expect(next - nearest!, one.text).toBeGreaterThan(0);
    }
  });

  test('break no wall', () => {
    const sides = walls.flatMap((mark) => (mark.mark === 'path' ? [mark.steps as readonly Spot[]] : []));
    for (const one of words)
      for (const steps of sides)
        for (const [i, spot] of steps.slice(1).entries())
          expect(segmentMeets(steps[i]!, spot, textBox(one)), one.text).toBe(false);
  });

  test('have the letter of the corner where the tape is hooked', () => {
    const letters = new Set(cornersOf(surface).map(({ name }) => name));
    const hooked = surface.chalk.lines.flatMap((line) => line.marks).filter(({ end }) => letters.has(end));
    expect(words.filter(({ text }) => /^[A-Z]: /.test(text)).length).toBeGreaterThanOrEqual(
      hooked.length - moved.length,
    );
  });
});

describe.each(demos.map(({ slug, packet }) => [slug, packet] as const))('the set-out of %s', (_, packet) => {
  const [surface] = packet.surfaces;
  const { svg } = drawSetOut(surface!, {
    id: 'one',
    label: 'one',
    ...packet.spec.print,
    say,
    space: { widthMm: 175, heightMm: 200 },
  });
  const words = textsIn(svg).map((one) => one.words);

  test('shows every line of its table that finds a place for its flag, also those snapped before a later zone', () => {
    const { lines, later = [] } = surface!.chalk;
    for (const { name } of [...lines, ...later.flatMap((set) => set.lines)]) expect(words).toContain(name);
  });

  test('has no size without an arrow: those of further lines stand in the table', () => {
    const figures = words.filter((one) => /\d+ (mm|in)$/.test(one));
    const most = surface!.chalk.lines.flatMap((line) => line.marks).length + 3;
    expect(figures.length).toBeLessThanOrEqual(most);
  });
});
