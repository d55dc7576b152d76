import { describe, expect, test } from 'vitest';
import { drawSetOut } from '../../src/drawing/index.ts';
import { faceWords, tapeWords } from '../../src/sheets/faceWords.ts';
import { textsIn } from '../drawing/readSvg.ts';
import { demos, words } from './demos.ts';

const say = words.say('en');
const space = { portrait: { widthMm: 180, heightMm: 240 }, landscape: { widthMm: 240, heightMm: 180 } };
const floors = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.map((surface) => [slug, packet, surface] as const),
);

const linesOf = ({ chalk }: (typeof floors)[number][2]) => [
  ...chalk.lines,
  ...(chalk.further ?? []),
  ...(chalk.later ?? []).flatMap(({ lines }) => lines),
];

describe.each(floors)('the tapes of the set-out of %s', (_, packet, surface) => {
  const marks = linesOf(surface).flatMap(({ marks }) => marks);
  const { svg } = drawSetOut(surface, { id: 's', label: 's', ...packet.spec.print, say, space });
  const shown = new Set(textsIn(svg).map(({ words: said }) => said));

  test('begin at two ends that are told apart', () => {
    for (const { edge, both } of marks) {
      if (!both) continue;
      const [one, other] = both.map(({ end }) => tapeWords(surface, edge, end, say));
      expect(one, edge).not.toBe(other);
    }
  });

  test('name corners of obstacles only by letters that stand on the drawing once, none of them a room’s corner', () => {
    const told = marks.flatMap(({ edge, end, both }) =>
      [end, ...(both ?? []).map((one) => one.end)].map((one) => tapeWords(surface, edge, one, say)),
    );
    const letters = told.flatMap((one) => /^corner ([A-Z]\d?) of /.exec(one)?.[1] ?? []);
    for (const letter of letters) expect(shown, letter).toContain(letter);
    const all = textsIn(svg).flatMap(({ words: said }) => (/^[A-Z]\d?$/.test(said) ? [said] : []));
    expect(new Set(all).size).toBe(all.length);
  });

  test('of two faces of one thing are named apart', () => {
    const faces = [...new Set(marks.map(({ edge }) => edge))].filter((edge) =>
      surface.obstacles.some(({ name }) => edge.startsWith(`${name}:`)),
    );
    const said = faces.map((edge) => faceWords(surface, edge, say));
    expect(new Set(said).size).toBe(faces.length);
  });
});

test('the tapes along both faces of the island are told by the letters of its corners', () => {
  const surface = floors.find(([slug]) => slug === 'quarry-kitchen')![2];
  const island = linesOf(surface)
    .flatMap(({ marks }) => marks)
    .filter(({ edge }) => edge.startsWith('island:'));
  const said = island.map(({ edge, end }) => [
    faceWords(surface, edge, say),
    tapeWords(surface, edge, end, say),
  ]);
  expect(said.length).toBeGreaterThan(1);
  for (const [face, corner] of said) {
    const [from, to] = /^face ([A-Z])-([A-Z]) of island$/.exec(face!)!.slice(1);
    const letter = /^corner ([A-Z]) of island$/.exec(corner!)![1];
    expect([from, to]).toContain(letter);
  }
});

interface Told {
  readonly lines: readonly { marks: readonly { distance: string; other: string }[] }[];
  readonly middle: string;
}

describe('a tape in millimetres', () => {
  const metric = demos.filter(({ packet }) => packet.spec.print.system === 'mm');
  const told = metric.flatMap(({ slug, sheets }) =>
    sheets
      .filter(({ template }) => template === 'set-out')
      .map(({ data }) => [slug, data as unknown as Told] as const),
  );

  test.each(told)('reads whole steps of the saw from both ends, which add up to the wall: %s', (_, data) => {
    const marks = data.lines.flatMap((line) => line.marks).filter(({ other }) => other !== '');
    expect(marks.length).toBeGreaterThan(0);
    for (const { distance, other } of marks) {
      const read = `${distance} ${other}`.match(/\d+(?:[.,]\d+)?(?= mm)/g)!.map(Number);
      // A mark that stands on the other end says so instead of 0 mm.
      const [first, second, sum] = read.length === 2 ? [read[0], 0, read[1]] : read;
      expect([first! % 1, second! % 1]).toEqual([0, 0]);
      expect(first! + second!).toBe(sum);
    }
  });

  test('reads to half a millimetre what stands off a line', () => {
    const off = told.flatMap(([, { middle }]) => middle.match(/\d+[.,]\d+(?= mm (?:off|apart))/g) ?? []);
    for (const size of off) expect(size).toMatch(/[.,]5$/);
  });
});

describe.each(demos)('what is taped off in $slug', ({ packet, sheets }) => {
  const told = sheets
    .filter(({ template }) => template === 'set-out')
    .flatMap(({ data }) => {
      const { lines } = data as {
        readonly lines: readonly {
          readonly marks: readonly { readonly distance: string; readonly other: string }[];
        }[];
      };
      return lines.flatMap(({ marks }) => marks);
    });

  // A tape has marks each 1/16 in; a sheet of finer saw steps counts in those.
  test('from either end, and both together, stands on marks that a tape has', () => {
    expect(told.length).toBeGreaterThan(0);
    const fine = packet.rounding.step < 508 ? /\/64/ : /\/(?:32|64)/;
    expect(told.flatMap(({ distance, other }) => [distance, other]).filter((one) => fine.test(one))).toEqual(
      [],
    );
  });
});
