import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/index.ts';
import {
  drawCarePicture,
  drawCheckBars,
  drawChoice,
  drawDropTest,
  drawGrid,
  drawJointFullSize,
  drawKeyPlan,
  drawMeasured,
  drawMeasureForm,
  drawMeasureHow,
  drawSection,
  drawSetOut,
  drawSwatch,
  drawThumbnail,
  drawTile,
  drawZone,
} from '../../src/drawing/index.ts';
import { planGrid } from '../../src/drawing/planGrid.ts';
import { tile } from './cutFixtures.ts';
import { bootRoom, say, surfaceOf } from './fixture.ts';
import { clashes, faultsOf, textsIn } from './readSvg.ts';

const options = { id: 'one', label: 'one', system: 'inches', say } as const;
const surface = surfaceOf(bootRoom);
const space = { widthMm: 183, heightMm: 150 };
const reading = (id: string, kind: 'wall' | 'diagonal', ...read: number[]) => ({
  id,
  kind,
  read,
  mean: read[0]!,
});
const measured = {
  ...surface,
  adjustment: {
    readings: [
      reading('A-B', 'wall', 798576, 799084),
      reading('B-C', 'wall', 491744),
      reading('A-C', 'diagonal', 936000, 936500),
      reading('B-D', 'diagonal', 940000),
    ],
    suspects: [{ ids: ['A-C'] }],
  },
} as unknown as Parameters<typeof drawMeasured>[0];
const openings = surface.openings.map((one) => ({ ...one, name: 'antechamber of the house' }));
const longNamed = {
  ...surface,
  openings,
  edges: surface.edges.map((edge) => ({
    ...edge,
    id: edge.id.replace('hall:', 'antechamber of the house:'),
  })),
};
const twoParts = planGrid(surface, { portrait: space, landscape: space }, 16, 14);
const layer = (name: string, thickness: number) => ({ name, thickness });
const base = {
  below: 'boards',
  removed: [layer('vinyl', 1016)],
  kept: [],
  fresh: [layer('board', 2032), layer('mortar', 762), layer('tile', 3048)],
};
const heights = {
  undercut: 6604,
  results: [
    { name: 'door', after: 2032 },
    { name: 'hall', after: -500 },
  ],
};

const drawings: Readonly<Record<string, Drawing>> = {
  'set-out': drawSetOut(surface, { ...options, space }),
  'set-out at 45°': drawSetOut(surfaceOf({ ...bootRoom, turn: 45 }), { ...options, space }),
  'zone 1': drawZone(surface, surface.zones[0]!, { ...options, space }),
  'zone 2': drawZone(surface, surface.zones[1]!, { ...options, space }),
  section: drawSection(
    { base, heights, isUndercut: true } as unknown as Parameters<typeof drawSection>[0],
    options,
  ),
  tile: drawTile(tile, options),
  joint: drawJointFullSize(1524, options),
  'check bars': drawCheckBars(options),
  'blank rectangle': drawMeasureForm('rectangle', options),
  'blank L': drawMeasureForm('L', options),
  'blank T': drawMeasureForm('T', options),
  'squared field': drawGrid({ widthMm: 96, heightMm: 96 }, 5, options),
  'corner check': drawMeasureHow('cornerCheck', options),
  'base line': drawMeasureHow('baseLine', options),
  'a doorway measured': drawMeasureHow('doorway', options),
  'obstacles measured': drawMeasureHow('obstacle', options),
  'as measured': drawMeasured(measured, { ...options, space }),
  'drop test': drawDropTest(options),
  thumbnail: drawThumbnail(surface, { ...options, space: { widthMm: 40, heightMm: 30 } }),
  'choice with long words': drawChoice(longNamed, longNamed.pieces, {
    ...options,
    space: { widthMm: 76, heightMm: 70 },
  }),
  swatch: drawSwatch('hard', options),
  'key of the pages': drawKeyPlan(surface, twoParts, 1, { ...options, space: { widthMm: 60, heightMm: 30 } }),
  picture: drawCarePicture('care.dont.wax', options),
};

describe.each(Object.entries(drawings))('%s', (_name, drawing) => {
  test('is well-formed, labelled, and has no words on other words or off its edge', () => {
    expect(faultsOf(drawing.svg)).toEqual([]);
    expect(drawing.svg).toContain('role="img" aria-label="one"');
    const texts = textsIn(drawing.svg);
    expect(clashes(texts)).toEqual([]);
    expect(
      texts.filter(
        ({ left, right, top, bottom }) =>
          left < 0 || top < 0 || right > drawing.widthMm || bottom > drawing.heightMm,
      ),
    ).toEqual([]);
  });
});

test('check bars are 4 in and 100 mm long both ways', () => {
  const long = (svg: string) =>
    [...svg.matchAll(/M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)/g)]
      .map(([, ...ends]) => ends.map(Number))
      .map(([a, b, c, d]) => [Math.abs(c! - a!), Math.abs(d! - b!)]);
  const bars = (svg: string) => [
    Math.max(...long(svg).map(([x]) => x!)),
    Math.max(...long(svg).map(([, y]) => y!)),
  ];
  expect(bars(drawings['check bars']!.svg)).toEqual([101.6, 101.6]);
  expect(bars(drawCheckBars({ ...options, system: 'mm' }).svg)).toEqual([100, 100]);
});

test('a joint is drawn at full size: 3/16 in is 4.7625 mm', () => {
  const edges = [
    ...drawings.joint!.svg.match(/<path d="([^"]*)"[^>]*stroke-width="0.25"/)![1]!.matchAll(/M([\d.]+),/g),
  ].map(([, x]) => Number(x));
  const gaps = [...new Set(edges)].sort((a, b) => a - b);
  expect(gaps.at(-1)! - gaps[0]!).toBeCloseTo(4.7625, 2);
});

test('running distances are printed once a mark, from a lettered corner', () => {
  const words = textsIn(drawings['set-out']!.svg).map((one) => one.words);
  expect(words).toEqual(
    expect.arrayContaining(['A: 4 ft 1 in', 'D: 4 ft 0 15/16 in', 'B: 2 ft 7 in', 'D: 1 ft 9 1/2 in']),
  );
});
