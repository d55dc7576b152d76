import { describe, expect, test } from 'vitest';
import { type Box, boxOf, boxRound, overlap, segmentMeets, within } from '../../src/drawing/boxes.ts';
import { chalkLine } from '../../src/drawing/chalkMarks.ts';
import { firstApart } from '../../src/drawing/firstFree.ts';
import { inRings, segmentsCross } from '../../src/drawing/inRings.ts';
import { kneelSign, type ZoneOnPaper } from '../../src/drawing/kneelSign.ts';
import type { Mark, Spot } from '../../src/drawing/Mark.ts';
import { markBounds } from '../../src/drawing/markBounds.ts';
import { cornerLetters, doorWords, wallMarks } from '../../src/drawing/roomMarks.ts';
import { scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { seamMarks } from '../../src/drawing/seamMarks.ts';
import { takenBy } from '../../src/drawing/takenBy.ts';
import { text } from '../../src/drawing/text.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import type { PacketSurface } from '../../src/packet/Packet.ts';
import { bootRoom, type FixtureRoom, say, surfaceOf } from './fixture.ts';

const inch = 8128;
const at = (x: number, y: number): readonly [number, number] => [Math.round(x * inch), Math.round(y * inch)];
const WORD = 'kneel here';

/** A room on paper at 1:ratio with a border round it, as a drawing has it. */
function onPaper(surface: PacketSurface, ratio: number, border: number) {
  const scale = scaleFor(surface.outline, surface.turn, ratio, [border, border]);
  const outline = surface.outline.map((point) => toPaper(scale, point));
  const { right, top } = boxOf(outline);
  const paper = { left: 0, bottom: 0, right: right + border, top: top + border };
  return { scale, outline, paper };
}

const textsOf = (marks: readonly Mark[]) => marks.filter((mark) => mark.mark === 'text');
const circlesOf = (marks: readonly Mark[]) => marks.filter((mark) => mark.mark === 'circle');

describe('the sign where to kneel at the end of a zone', () => {
  /** The sign of a zone beside walls, corner letters and the words of the doorway. */
  function signOf(number: number, ratio: number, border: number, word = WORD) {
    const surface = surfaceOf(bootRoom);
    const { scale, outline, paper } = onPaper(surface, ratio, border);
    const zone = surface.zones.find((one) => one.number === number)!;
    const on: ZoneOnPaper = { surface, zone, scale };
    const drawn = [
      ...wallMarks(surface, scale),
      ...seamMarks(surface, scale),
      ...cornerLetters(surface, scale),
    ];
    const doors = [...drawn, ...doorWords(surface, scale, say, { ...takenBy(drawn), paper })];
    const marks = kneelSign(on, { ...takenBy(doors), paper }, word);
    return { marks, doors, outline, paper, surface, scale };
  }
  const knees = (marks: readonly Mark[]) => circlesOf(marks).map(({ centre }) => centre);

  test('is two knees and a word', () => {
    const { marks } = signOf(1, 24, 14);
    expect(knees(marks)).toHaveLength(2);
    expect(textsOf(marks).map((mark) => mark.text)).toEqual([WORD]);
  });

  test('lies on bare floor while a zone is still to come, off the pieces that were just set', () => {
    const { marks, outline, surface, scale } = signOf(1, 24, 14);
    const own = surface.pieces
      .filter(({ zone }) => zone === 1)
      .map(({ shape }) => boxOf(shape.outer.map((point) => toPaper(scale, point))));
    for (const mark of marks) expect(own.filter((box) => overlap(markBounds([mark]), box))).toEqual([]);
    for (const knee of knees(marks)) expect(inRings(knee, [outline])).toBe(true);
  });

  test.each([WORD, 'arrodíllese aquí', 'ajoelhe-se bem aqui'])(
    'keeps its box off walls, seams and what stands there: %s',
    (word) => {
      const { marks, doors, surface, scale } = signOf(1, 24, 14, word);
      const [box] = marks.flatMap((mark) => (mark.mark === 'area' ? [markBounds([mark])] : []));
      const solid = surface.obstacles.map(
        ({ ring }): Mark => ({
          mark: 'area',
          rings: [ring.map((point) => toPaper(scale, point))],
        }),
      );
      const { lines } = takenBy([...doors, ...solid], true);
      expect(lines.length).toBeGreaterThan(doors.length / 2);
      expect(lines.filter(([a, b]) => segmentMeets(a, b, box!, 0.5))).toEqual([]);
    },
  );

  test.each([
    [24, 14],
    [48, 14],
    [48, 12],
  ])('stands outside the doorway after the last zone, at 1:%i with a border of %i mm', (ratio, border) => {
    const { marks, outline, paper, doors } = signOf(2, ratio, border);
    expect(within(markBounds(marks), paper)).toBe(true);
    for (const spot of [...knees(marks), ...textsOf(marks).map((mark) => mark.at)])
      expect(inRings(spot, [outline]), `${spot}`).toBe(false);
    for (const mark of marks)
      expect(takenBy(doors).boxes.filter((box) => overlap(markBounds([mark]), box))).toEqual([]);
  });

  test('lies on the pieces themselves where the paper has no room outside', () => {
    const { marks, outline } = signOf(2, 24, 1);
    for (const knee of knees(marks)) expect(inRings(knee, [outline])).toBe(true);
  });
});

describe('the flags of a chalk line', () => {
  const surface = surfaceOf(bootRoom);
  const { scale, outline } = onPaper(surface, 24, 16);

  test.each(surface.chalk.lines)(
    'of line $name stand at both ends, outside the walls and on the line',
    (line) => {
      const marks = chalkLine(line, scale);
      const flags = circlesOf(marks);
      expect(textsOf(marks).map((mark) => mark.text)).toEqual([line.name, line.name]);
      expect(flags).toHaveLength(2);
      for (const { centre, radius } of flags) {
        expect(inRings(centre, [outline])).toBe(false);
        const ends = [line.from, line.to].map((point) => toPaper(scale, point));
        const away = ends.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1]));
        // The line runs 6 mm past the wall and ends at the flag.
        expect(Math.min(...away)).toBeCloseTo(6 + radius, 6);
        expect(Math.max(...away) - Math.min(...away)).toBeCloseTo(Math.hypot(ends[0]![0] - ends[1]![0], ends[0]![1] - ends[1]![1]), 6); // biome-ignore format: two distances on a line
      }
    },
  );
});

describe('the letter of a corner', () => {
  /** A room whose corner E juts into it. */
  const lRoom: FixtureRoom = {
    ...bootRoom,
    outline: [at(0, 0), at(150, 0), at(150, 120), at(90, 120), at(90, 70), at(0, 70)],
    doorLine: [at(40, 0), at(70, 0)],
    obstacles: [],
  };
  const lettered = (): PacketSurface => {
    const surface = surfaceOf(lRoom);
    const ids = ['A-B', 'B-C', 'C-D', 'D-E', 'E-F', 'F-A'];
    return { ...surface, edges: surface.edges.map((edge, i) => ({ ...edge, id: ids[i]! })) };
  };
  const wallsOf = (outline: readonly Spot[]) =>
    outline.map((spot, i) => [spot, outline[(i + 1) % outline.length]!] as const);
  const sides = ({ left, bottom, right, top }: Box) =>
    wallsOf([
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ]);

  test.each([24, 48])(
    'stands outside the room and on no wall, also where a corner juts in, at 1:%i',
    (ratio) => {
      const surface = lettered();
      const { scale, outline } = onPaper(surface, ratio, 14);
      const letters = textsOf(cornerLetters(surface, scale));
      expect(letters.map((mark) => mark.text)).toEqual(['A', 'B', 'C', 'D', 'E', 'F']);
      for (const letter of letters) {
        expect(inRings(letter.at, [outline]), letter.text).toBe(false);
        const crossed = wallsOf(outline).filter(([a, b]) =>
          sides(textBox(letter)).some(([c, d]) => segmentsCross(a, b, c, d)),
        );
        expect(crossed, letter.text).toEqual([]);
      }
    },
  );

  test('is near its corner', () => {
    const surface = lettered();
    const { scale, outline } = onPaper(surface, 24, 14);
    const letters = textsOf(cornerLetters(surface, scale));
    for (const [i, { at: spot }] of letters.entries())
      expect(Math.hypot(spot[0] - outline[i]![0], spot[1] - outline[i]![1])).toBeLessThan(6);
  });

  test('stands beside what is there already', () => {
    const surface = lettered();
    const { scale } = onPaper(surface, 24, 14);
    const first = textsOf(cornerLetters(surface, scale))[0]!;
    const there: Mark = { mark: 'circle', centre: first.at, radius: 1, fill: 'paper' };
    const moved = textsOf(cornerLetters(surface, scale, [there]))[0]!;
    expect(overlap(textBox(moved), boxRound(first.at, 2, 2))).toBe(false);
  });
});

describe('words that have several places', () => {
  const tries = [0, 10, 20].map((x) => text([x, 0], 'a'));
  const upright = (x: number) => [[x, -5], [x, 5]] as const; // biome-ignore format: a line on a line

  test('take the first that touches neither words nor lines', () => {
    expect(firstApart(tries, { boxes: [], lines: [upright(0)] })).toBe(tries[1]);
  });

  test('touch as few lines as may be where there is no such place, and no words', () => {
    const lines = [upright(0), upright(0.2), upright(10), upright(20), upright(20.2)];
    expect(firstApart(tries, { boxes: [], lines })).toBe(tries[1]);
    expect(firstApart(tries, { boxes: [boxRound([10, 0], 2, 2)], lines })).toBe(tries[0]);
  });

  test('have none where words are everywhere', () => {
    expect(firstApart(tries, { boxes: [boxRound([10, 0], 30, 4)], lines: [] })).toBeUndefined();
  });
});
