import { describe, expect, test } from 'vitest';
import { bounds } from '../../src/geometry/index.ts';
import { demos, sheetsOnce } from './demos.ts';

/** A hall in running bond, whose first course is sawn. */
const hall = (bond: string, crew: string, pace: string) => `
title: Hall in running bond
house year: 2004
revision: {letter: A, date: 2027-03-01}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: ${crew}, owner: ${crew}}
work: {pace: ${pace}}
tile:
  field: {name: Plank, read: 35 7/16 in x 5 7/8 in, edge: rectified, bow: 1/32 in}
joint: 1/8 in
floor:
  walls: {A-B: 18 ft 3 in, B-C: 6 ft 1 in, C-D: 18 ft 3 in, D-A: 6 ft 1 in}
  doorways:
    den: {in: B-C, from B: 8 in, clear: 30 in, wall: 4 1/2 in, left: plain, right: plain, beyond: tile}
  pattern: {running: ${bond}}
  start: {across: joint on den}
`;

const TOLD = {
  en: /(Lines? ([\d, ]+) (?:is a joint|are joints) in the course of tile ([KLMN]\d+-\d+))([^.]*)\./,
  es: /(Las? líneas? ([\d, ]+) (?:es|son) junta en la hilada de la baldosa ([KLMN]\d+-\d+))([^.]*)\./,
  pt: /(As? linhas? ([\d, ]+) (?:é|são) junta na fiada da placa ([KLMN]\d+-\d+))([^.]*)\./,
} as const;
const EVERY = { '1/2': 2, '1/3': 3, '1/4': 4, '7 in': 0 } as const;
const AS_WORDS = { 'every second': 2, 'every third': 3, 'one course of 4': 4 } as const;

const wordsOf = ({ sheets }: Pick<(typeof demos)[number], 'sheets'>) =>
  (sheets.find(({ template }) => template === 'set-out')!.data as { middle: string }).middle;

const bonds = (['1/2', '1/3', '1/4', '7 in'] as const).flatMap((bond) =>
  (['15 sq ft an hour', '6 sq ft an hour'] as const).map((pace) => [bond, pace] as const),
);

describe.each(bonds)('the set-out of a hall in running bond by %s, %s', (bond, pace) => {
  const made = sheetsOnce('hall', hall(bond, 'en', pace));
  const { pieces, chalk, joint } = made.packet.surfaces[0]!;
  const [, , lines, tile, more] = TOLD.en.exec(wordsOf(made))!;
  const snapped = [
    ...chalk.lines,
    ...(chalk.further ?? []),
    ...(chalk.later ?? []).flatMap((one) => one.lines),
  ];

  test('names every upright line', () => {
    const upright = snapped.flatMap(({ axis, name }) => (axis === 'along' ? [Number(name)] : []));
    expect(lines!.split(', ').map(Number)).toEqual(upright.sort((a, b) => a - b));
  });

  // Which courses have a joint there is read off the tiles, as they lie.
  test('names the courses that have a joint on them, and no others', () => {
    const row = pieces.find(({ id }) => id === tile)!.row;
    const every = Object.entries(AS_WORDS).find(([words]) => more!.includes(words))?.[1] ?? 0;
    expect(every).toBe(EVERY[bond]);
    for (const name of lines!.split(', ')) {
      const [at] = snapped.find((line) => line.name === name)!.from;
      for (const piece of pieces) {
        const { minX, maxX } = bounds(piece.fullTile);
        const isAcross = minX < at - joint && maxX > at + joint;
        const isOwn = every > 0 ? (piece.row - row) % every === 0 : piece.row === row;
        if (isOwn) expect(isAcross, `${piece.id} on line ${name}`).toBe(false);
      }
      const others = pieces.filter(({ row: own }) => every > 0 && (own - row) % every !== 0);
      const across = new Set(others.flatMap((piece) => (isOver(piece.fullTile, at) ? [piece.row] : [])));
      const beside = new Set(others.map((piece) => piece.row));
      expect(across).toEqual(beside);
    }
  });
});

function isOver(ring: Parameters<typeof bounds>[0], at: number): boolean {
  const { minX, maxX } = bounds(ring);
  return minX < at && at < maxX;
}

describe.each(['es', 'pt'] as const)('in %s', (lang) => {
  test('the same lines and tile are told as in English', () => {
    const [said, other] = (['en', lang] as const).map((one) =>
      TOLD[one].exec(wordsOf(sheetsOnce('hall', hall('1/2', one, '15 sq ft an hour')))),
    );
    expect(other!.slice(2, 4)).toEqual(said!.slice(2, 4));
  });
});

test('only floors whose courses are shifted are told so', () => {
  for (const demo of demos.filter(({ packet }) => packet.spec.print.crew[0] === 'en')) {
    const isShifted = demo.packet.surfaces[0]!.chalk.lines.some(({ courses }) => courses);
    expect(TOLD.en.test(wordsOf(demo)), demo.slug).toBe(isShifted);
  }
});
