import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cuts/Cut.ts';
import { isHard } from '../../src/cuts/isHard.ts';
import type { Packet, PacketSurface } from '../../src/packet/Packet.ts';
import { cutOnCard } from '../../src/sheets/cutOnCard.ts';
import { readWords } from '../../src/site/words.ts';
import { home, patience } from './support/browserPath.ts';
import { type BuiltJob, demoJobs } from './support/buildJobs.ts';
import { demoSite } from './support/demoSite.ts';
import { fractionsIn, momentFigures, tapeFigure } from './support/printedFigures.ts';
import { readPrinted } from './support/readPrinted.ts';
import { holdsFigure, sawFigure } from './support/sawFigures.ts';

const words = readWords(join(home, 'layouts', 'words'));
const slugs = Object.keys(demoJobs());

const flat = (text: string) => text.replace(/\s+/g, ' ');

describe.each(slugs)('what is read back from the PDF of %s is what its packet holds:', (slug) => {
  let job = {} as BuiltJob;
  let packet = {} as Packet;
  let surfaces: readonly PacketSurface[] = [];
  let cuts: readonly Cut[] = [];
  let textOf: (sheet: string) => string = () => '';
  /** Its figures one by one: an upright one may follow a level one without a space. */
  let runsOf: (sheet: string) => string = () => '';

  beforeAll(async () => {
    const site = await demoSite();
    job = site.jobs.find((one) => one.slug === slug)!;
    packet = job.packet;
    surfaces = packet.surfaces;
    cuts = surfaces.flatMap((surface) => surface.cuts);
    const { pages } = await readPrinted(join(site.output, slug, 'packet.pdf'));
    const langs = [packet.spec.print.crew[0]!, packet.spec.print.owner];
    const pagesOf = (sheet: string) => {
      const asked = langs.map((lang) => words.say(lang)(`sheet.${sheet}.question`));
      return pages.filter(({ text }) => asked.includes(text.split('\n')[0] ?? ''));
    };
    textOf = (sheet) =>
      flat(
        pagesOf(sheet)
          .map(({ text }) => text)
          .join('\n'),
      );
    runsOf = (sheet) =>
      pagesOf(sheet)
        .flatMap((page) => page.words.map(({ text }) => text))
        .join(' ');
  }, patience);

  const lost = (sheet: string, figures: readonly string[]) => {
    const texts = [textOf(sheet), runsOf(sheet)];
    return [...new Set(figures)].filter((figure) => !texts.some((text) => holdsFigure(text, figure)));
  };

  test('each size of a cut that has a card on it', () => {
    const { system } = packet.spec.print;
    // A piece that is cut elsewhere in its tile has the sizes of its card from there: elsewhere.test.ts holds these against the plan of tiles.
    const carded = surfaces.flatMap((surface) =>
      surface.cuts.filter(isHard).map((cut) => cutOnCard(surface, packet, cut)),
    );
    const sizes = carded.flatMap((cut) => cut.sizes.map(({ saw }) => sawFigure(saw, system)));
    expect(lost('hard-cuts', sizes)).toEqual([]);
  });

  test('each fence setting and each piece on the saw list', () => {
    const { system } = packet.spec.print;
    const plain = cuts.filter((cut) => !isHard(cut));
    expect(plain.length).toBeGreaterThan(5);
    const figures = plain.flatMap((cut) => cut.fences.map(({ saw }) => sawFigure(saw, system)));
    const text = textOf('saw-list');
    expect(lost('saw-list', figures)).toEqual([]);
    expect(plain.flatMap((cut) => cut.pieces).filter((piece) => !text.includes(piece))).toEqual([]);
  });

  test('no size on the saw list or on a card that is not a size of a cut', () => {
    const { system } = packet.spec.print;
    const known = new Set(
      cuts.flatMap((cut) => [...cut.fences, ...cut.sizes].map(({ saw }) => sawFigure(saw, system))),
    );
    // Of a tile with points, what a saw line leaves of the side it ends on is told too: an edge of the piece beside a sawn one, rounded down.
    const { step } = packet.spec.print;
    const pointed = packet.spec.tiles.flatMap(({ key, shape }) => (shape ? [key] : []));
    for (const { edges } of cuts.filter((cut) => !isHard(cut) && pointed.includes(cut.tile))) {
      const beside = edges.filter((edge, i) => {
        const sawn = [edges.at(i - 1)!, edges[(i + 1) % edges.length]!].some(({ factory }) => !factory);
        return edge.factory && sawn;
      });
      for (const { from, to } of beside) {
        const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
        known.add(sawFigure(Math.floor((length + 2) / step) * step, system));
      }
    }
    const printed = ['saw-list', 'hard-cuts'].flatMap((sheet) => fractionsIn(textOf(sheet)));
    expect(printed.filter((figure) => !known.has(figure))).toEqual([]);
  });

  test('each mark of a chalk line on the set-out, to the step of the tape', () => {
    const { system } = packet.spec.print;
    const { step } = packet.rounding;
    const marks = surfaces.flatMap(({ chalk }) => chalk.lines.flatMap((line) => line.marks));
    const read = marks.map(({ distance }) => tapeFigure(Math.round(distance / step) * step, system));
    expect(read.length).toBeGreaterThan(3);
    expect(lost('set-out', read)).toEqual([]);
  });

  test('each piece on the plan', () => {
    const text = textOf('layout-plan');
    const names = surfaces.flatMap(({ pieces }) => pieces.map(({ id }) => id));
    expect(names.filter((name) => !text.includes(name))).toEqual([]);
  });

  test('how many whole, cut, to buy and boxes in the tally', () => {
    // Lengths and volumes are bought in the units of the job.
    const counted = packet.materials.filter(({ buyUnit }) => ['box', 'bag', 'tube'].includes(buyUnit));
    const counts = counted.map(({ buy }) => String(buy));
    expect(counts.length).toBeGreaterThan(2);
    const tiles = Object.values(packet.tiles).flatMap(({ whole, cut }) => [String(whole), String(cut)]);
    expect(lost('material-tally', [...counts, ...tiles])).toEqual([]);
  });

  test('each day and hour of the calendar', () => {
    const lang = packet.spec.print.crew[0]!;
    const text = textOf('calendar').replace(/\s+/g, ' ').toLowerCase();
    const moments = packet.calendar.flatMap(({ from, to }) => (to ? [from, to] : [from]));
    expect(moments.length).toBeGreaterThan(4);
    const parts = moments.flatMap((moment) => momentFigures(moment, lang, packet.spec.print.paper));
    expect([...new Set(parts)].filter((part) => !text.includes(part.toLowerCase()))).toEqual([]);
  });
});
