import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { corners } from '../../src/drawing/boxes.ts';
import { type HatchName, hatches } from '../../src/drawing/hatches.ts';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg } from '../../src/drawing/penSvg.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { printPdf } from '../../src/site/printPdf.ts';
import { demos } from '../sheets/demos.ts';
import { browserPath, patience } from './support/browserPath.ts';
import { type Ink, inkAlong, inkShare, type Patch, printedInk } from './support/printedInk.ts';

const dotsPerInch = 300;
const dots = (mm: number) => Math.round((mm / 25.4) * dotsPerInch);

/** Squares of 30 mm in a row, the first without any fill. */
const names: readonly ('white' | HatchName)[] = ['white', ...(Object.keys(hatches) as HatchName[])];
const side = 30;

const squares = names.map((name, i): Mark => {
  const ring = corners({ left: i * side, bottom: 0, right: (i + 1) * side, top: side });
  return name === 'white'
    ? { mark: 'area', rings: [ring], line: 'joint' }
    : { mark: 'area', rings: [ring], fill: name };
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
    const patch = patchOf(names.indexOf(name as HatchName));
    return { share: inkShare(ink, patch), along: ways.map((way) => inkAlong(ink, patch, way)) };
  };

  beforeAll(async () => {
    const { svg } = penSvg(squares, { id: 'all', label: 'all', widthMm: 150, heightMm: side, ratio: 1 });
    const html = join(mkdtempSync(join(tmpdir(), 'packet-hatches-')), 'hatches.html');
    const style = '@page { size: 152mm 32mm; margin: 0 } body { margin: 0 } svg { display: block }';
    writeFileSync(
      html,
      `<!doctype html><html lang="en"><title>all</title><style>${style}</style>${svg}</html>`,
    );
    const browser = await openBrowser(browserPath());
    ink = await printedInk(await printPdf(await browser.newPage(), html), dotsPerInch);
    await browser.close();
  }, patience);

  const pairs = names.flatMap((one, i) => names.slice(i + 1).map((other) => [one, other] as const));

  test.each(pairs)('%s and %s are told apart by their ink or their direction', (one, other) => {
    const [a, b] = [look(one), look(other)];
    const [less, more] = [Math.min(a.share, b.share), Math.max(a.share, b.share)];
    const turned = Math.max(...ways.map((_, i) => Math.abs(a.along[i]! - b.along[i]!)));
    expect(more > factor * less || turned > turn, JSON.stringify([a, b])).toBe(true);
  });

  // Arithmetic: a line of 0.18 mm each 3 mm, twice that less the crossings, a dot of 0.35 mm each 2.5 mm square.
  test.each([
    ['white', 0],
    ['cut', 0.18 / 3],
    ['hard', (2 * 0.18) / 3 - (0.18 / 3) ** 2],
    ['hidden', (Math.PI * 0.35 ** 2) / 4 / 2.5 ** 2],
  ])('%s lies on the paper as it is drawn: a dot of ink in %f', (name, share) => {
    expect(Math.abs(look(name).share - share)).toBeLessThan(0.006 + share * 0.25);
  });

  test('every hatch leaves a letter on it legible: less than a quarter is ink', () => {
    expect(names.filter((name) => look(name).share > 0.25)).toEqual([]);
  });
});

/** How each hatch of a drawing is drawn: its pen, not where its lines lie. */
const pensOf = (svg: string) =>
  new Map(
    [...svg.matchAll(/<path d="[^"]*" ([^>]*) clip-path="url\(#[^)]*-(\w+)\)"/g)].map(
      ([, pen, name]) => [name!, pen!] as const,
    ),
  );

describe.each(demos)('the key under the plan of $slug', ({ sheets }) => {
  const plans = sheets.filter(({ template }) => template === 'layout-plan');

  test('shows every fill of the drawing, with the very same hatch', () => {
    for (const { data } of plans) {
      const { plan, swatches } = data as { plan: string; swatches: readonly { svg: string }[] };
      const key = pensOf(swatches.map(({ svg }) => svg).join(''));
      for (const [name, pen] of pensOf(plan)) expect(key.get(name), name).toBe(pen);
      expect(pensOf(plan).size).toBeGreaterThan(0);
    }
  });
});
