import { describe, expect, test } from 'vitest';
import { drawPlan } from '../../src/drawing/drawPlan.ts';
import { bootRoom, type FixtureRoom, say, surfaceOf } from './fixture.ts';
import { clashes, faultsOf, textsIn } from './readSvg.ts';

const space = { portrait: { widthMm: 183, heightMm: 203 }, landscape: { widthMm: 247, heightMm: 140 } };
const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;

const rooms: Readonly<Record<string, FixtureRoom>> = {
  'a boot room': bootRoom,
  'the same at 45°': { ...bootRoom, turn: 45 },
  'the same turned by 90°': { ...bootRoom, turn: 90 },
  'small tiles': { ...bootRoom, tile: [48000, 24000] },
  mosaic: { ...bootRoom, tile: [16256, 16256], joint: 640 },
};

describe.each(Object.entries(rooms))('the plan of %s', (_name, room) => {
  const surface = surfaceOf(room);
  const plain = drawPlan(surface, options);
  const numbered = drawPlan(surface, { ...options, numbers: true });

  test('is well-formed', () => {
    expect(faultsOf(plain.svg)).toEqual([]);
    expect(faultsOf(numbered.svg)).toEqual([]);
  });

  test('has no words on other words, measured with the font itself', () => {
    expect(clashes(textsIn(plain.svg))).toEqual([]);
    expect(clashes(textsIn(numbered.svg))).toEqual([]);
  });

  test('keeps all words on the paper', () => {
    const off = textsIn(numbered.svg).filter(
      ({ left, right, top, bottom }) =>
        left < 0 || top < 0 || right > numbered.widthMm || bottom > numbered.heightMm,
    );
    expect(off).toEqual([]);
  });

  test('names every cut piece or says which it could not', () => {
    const written = new Set(textsIn(plain.svg).map(({ words }) => words));
    const cut = surface.pieces.filter(({ whole }) => !whole).map(({ id }) => id);
    const missing = cut.filter((id) => !written.has(id));
    expect(missing.filter((id) => !plain.unnamed.includes(id))).toEqual([]);
  });

  test('is true to scale: 98.25 in of wall A-B', () => {
    const length = (98.25 * 25.4) / plain.ratio!;
    const walls = /<path d="([^"]*)"[^>]*stroke-width="0.7"/.exec(plain.svg)![1]!;
    const [[x, y], [toX, toY]] = [...walls.matchAll(/[ML]([-\d.]+),([-\d.]+)/g)].map(([, a, b]) => [
      Number(a),
      Number(b),
    ]) as [[number, number], [number, number]];
    expect(Math.hypot(toX - x, toY - y)).toBeCloseTo(length, 2);
    expect(toY).toBeCloseTo(y, 2);
  });
});

test('a plan of tiles that hold no name numbers columns and rows along the chalk lines', () => {
  const plan = drawPlan(surfaceOf(rooms.mosaic!), options);
  expect(plan.counted).toBe(true);
  expect(plan.numbered).toBe(true);
  expect(drawPlan(surfaceOf(bootRoom), options)).toMatchObject({ counted: false, numbered: false });
});

test('tiles that lie two ways are not numbered: their columns and rows are none that an eye can follow', () => {
  const surface = surfaceOf(rooms.mosaic!);
  const twoWays = surface.pieces.map((piece, i) => ({ ...piece, quarter: i % 2 }));
  const plan = drawPlan({ ...surface, pieces: twoWays } as typeof surface, options);
  expect(plan).toMatchObject({ counted: true, numbered: false });
  expect(textsIn(plan.svg).filter(({ words }) => words === '3' || words === '4')).toEqual([]);
});
