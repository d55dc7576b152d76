import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { corners } from '../../src/drawing/boxes.ts';
import { type HatchName, hatches } from '../../src/drawing/hatches.ts';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg } from '../../src/drawing/penSvg.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { printPdf } from '../../src/site/printPdf.ts';
import { floorJob, patternJobs, patternPacket } from '../packet/support/patternFloors.ts';
import { demos, words } from '../sheets/demos.ts';
import { browserPath, patience } from './support/browserPath.ts';
import { type Ink, inkAlong, inkShare, type Patch, printedInk } from './support/printedInk.ts';

const dotsPerInch = 300;
const dots = (mm: number) => Math.round((mm / 25.4) * dotsPerInch);

/** A hatch of a cut over one that tells a tile of the pattern from the first. */
const over = ['second', 'third', 'fourth', 'fifth', 'sixth'].flatMap((tile) =>
  ['cut', 'hard'].map((cut) => `${tile} ${cut}`),
);
/** Squares of 30 mm in a row, the first without any fill. */
const plain = ['white', ...Object.keys(hatches)];
const names: readonly string[] = [...plain, ...over];
const side = 30;

const squares = names.flatMap((name, i): Mark[] => {
  const rings = [corners({ left: i * side, bottom: 0, right: (i + 1) * side, top: side })];
  if (name === 'white') return [{ mark: 'area', rings, line: 'joint' }];
  return name.split(' ').map((fill) => ({ mark: 'area', rings, fill: fill as HatchName }));
});

/** A square without its rim, where neighbours touch. */
const patchOf = (i: number): Patch => ({ left: dots(i * side + 3), top: dots(3), side: dots(side - 6) });

/** A step of 1 mm along each diagonal and each axis. */
const step = dots(1);
const ways = [[step, 0], [step, step], [0, step], [-step, step]] as const; // biome-ignore format: four ways on a line

/** Ink differs by this factor, or a direction by this much, where an eye tells two hatches apart. */
const factor = 1.6;
const turn = 0.5;

describe('hatches, printed in black and white at 300 dots an inch', () => {
  let ink: Ink;
  const look = (name: string) => {
    const patch = patchOf(names.indexOf(name));
    return { share: inkShare(ink, patch), along: ways.map((way) => inkAlong(ink, patch, way)) };
  };

  beforeAll(async () => {
    const widthMm = names.length * side;
    const { svg } = penSvg(squares, { id: 'all', label: 'all', widthMm, heightMm: side, ratio: 1 });
    const html = join(mkdtempSync(join(tmpdir(), 'packet-hatches-')), 'hatches.html');
    const style = `@page { size: ${widthMm + 2}mm 32mm; margin: 0 } body { margin: 0 } svg { display: block }`;
    writeFileSync(
      html,
      `<!doctype html><html lang="en"><title>all</title><style>${style}</style>${svg}</html>`,
    );
    const browser = await openBrowser(browserPath());
    ink = await printedInk(await printPdf(await browser.newPage(), html), dotsPerInch);
    await browser.close();
  }, patience);

  // A hard cut has a heavy outline too, so hatches over those of a tile are held against all others but it.
  const pairs = [
    ...plain.flatMap((one, i) => plain.slice(i + 1).map((other) => [one, other] as const)),
    ...over.flatMap((one) => plain.filter((other) => other !== 'hard').map((other) => [one, other] as const)),
  ];

  test.each(pairs)('%s and %s are told apart by their ink or their direction', (one, other) => {
    const [a, b] = [look(one), look(other)];
    const [less, more] = [Math.min(a.share, b.share), Math.max(a.share, b.share)];
    const turned = Math.max(...ways.map((_, i) => Math.abs(a.along[i]! - b.along[i]!)));
    expect(more > factor * less || turned > turn, JSON.stringify([a, b])).toBe(true);
  });

  // Arithmetic: a line of 0.18 mm each 3 mm, one each 1.8 mm of which 3 mm in 4.2 are drawn, twice that less the crossings, a dot of 0.35 mm each 2.5 mm square.
  test.each([
    ['white', 0],
    ['cut', 0.18 / 3],
    ['hard', (2 * 0.18) / 3 - (0.18 / 3) ** 2],
    ['second', (0.18 / 1.8) * (3 / 4.2)],
    ['third', (0.18 / 1.8) * (3 / 4.2)],
    ['fourth', (Math.PI * 0.7 ** 2) / 4 / 3 ** 2],
    ['fifth', (0.18 / 3.4) * (3 / 4.2)],
    ['sixth', (0.18 / 3.2) * (3 / 4.2)],
    ['hidden', (Math.PI * 0.35 ** 2) / 4 / 2.5 ** 2],
  ])('%s lies on the paper as it is drawn: a dot of ink in %f', (name, share) => {
    expect(Math.abs(look(name).share - share)).toBeLessThan(0.006 + share * 0.25);
  });

  test('every hatch leaves a letter on it legible: less than a quarter is ink', () => {
    expect(names.filter((name) => look(name).share > 0.25)).toEqual([]);
  });
});

interface Keyed {
  readonly plan: string;
  readonly swatches: readonly { readonly svg: string }[];
  readonly tiles: readonly { readonly name: string; readonly count: number; readonly svg: string }[];
}

/** How each hatch of a drawing is drawn: its pen, not where its lines lie. */
const pensOf = (svg: string) =>
  new Map(
    [...svg.matchAll(/<path d="[^"]*" ([^>]*) clip-path="url\(#[^)]*-(\w+)\)"/g)].map(
      ([, pen, name]) => [name!, pen!] as const,
    ),
  );

/** Four tiles of a pattern and two that only rugs have. */
const ofSixTiles = floorJob('four sizes with two rugs', {
  tile: {
    largest: { read: '23 7/8 in x 15 7/8 in' },
    large: { read: '15 7/8 in x 15 7/8 in' },
    oblong: { read: '15 7/8 in x 7 7/8 in' },
    small: { read: '7 7/8 in x 7 7/8 in' },
    rust: { read: '5 7/8 in x 5 7/8 in' },
    rose: { read: '5 7/8 in x 5 7/8 in' },
  },
  joint: '1/8 in',
  pattern: { 'four sizes': null, tiles: ['largest', 'large', 'oblong', 'small'] },
  inlays: {
    rug: {
      rectangle: '17 7/8 in x 17 7/8 in',
      'from A-B': '20 in',
      'from F-A': '36 in',
      pattern: { straight: null, tile: 'rust' },
    },
    mat: {
      rectangle: '11 7/8 in x 11 7/8 in',
      'from A-B': '10 in',
      'from F-A': '66 in',
      pattern: { straight: null, tile: 'rose' },
    },
  },
});

const ofSeveralTiles = [
  ...patternJobs().filter(([name]) => /checker|sizes|octagon/.test(name)),
  ['six tiles', ofSixTiles] as const,
].map(([slug, job]) => {
  const packet = patternPacket(job);
  return { slug, packet, sheets: makeSheets(packet, words) };
});

/** Hatches of the tiles of a pattern; those of cuts have their words in the key. */
const ofTiles = ['second', 'third', 'fourth', 'fifth', 'sixth'];

describe.each([...demos, ...ofSeveralTiles])('the key under the plan of $slug', ({ packet, sheets }) => {
  const { pieces } = packet.surfaces[0]!;
  const named = new Map(packet.spec.tiles.map(({ key, name }) => [key, name]));
  const counted = (ids: ReadonlySet<string>) =>
    [...named].flatMap(([key, name]) => {
      const count = pieces.filter(({ id, tile }) => tile === key && ids.has(id)).length;
      return count > 0 ? [[name, count] as const] : [];
    });
  const inKey = ({ tiles }: Keyed) => tiles.map(({ name, count }) => [name, count] as const);
  const keysOf = (template: string) =>
    sheets.filter((sheet) => sheet.template === template).map(({ data }) => data as Keyed);

  test('shows every fill of the drawing, with the very same hatch', () => {
    for (const { plan, swatches, tiles } of keysOf('layout-plan')) {
      const key = pensOf([...swatches, ...tiles].map(({ svg }) => svg).join(''));
      for (const [name, pen] of pensOf(plan)) expect(key.get(name), name).toBe(pen);
      expect(pensOf(plan).size).toBeGreaterThan(0);
    }
  });

  test('names each tile of a pattern of several with its own hatch and as many pieces as the packet has of it', () => {
    const all = counted(new Set(pieces.map(({ id }) => id)));
    for (const key of keysOf('layout-plan')) {
      expect(inKey(key)).toEqual(all.length > 1 ? all : []);
      const looks = key.tiles.map(({ svg }) => [...pensOf(svg).keys()].join(' '));
      expect(new Set(looks).size).toBe(looks.length);
      if (all.length < 2)
        expect([...pensOf(key.plan).keys()].filter((one) => ofTiles.includes(one))).toEqual([]);
    }
  });

  test('tells the tiles of each zone apart in the same way, and the first tile of the set-out', () => {
    const { zones, chalk } = packet.surfaces[0]!;
    const several = new Set(pieces.map(({ tile }) => tile)).size > 1;
    const asked = (ids: readonly string[]) => (several ? counted(new Set(ids)) : []);
    expect(keysOf('zone').map(inKey)).toEqual(zones.map((zone) => asked(zone.pieces)));
    expect(keysOf('set-out').map(inKey)).toEqual([asked([chalk.firstPiece])]);
    for (const { plan, tiles } of keysOf('zone')) {
      const key = pensOf(tiles.map(({ svg }) => svg).join(''));
      for (const name of ofTiles) expect(key.get(name), name).toBe(pensOf(plan).get(name));
    }
  });
});
