import { describe, expect, test } from 'vitest';
import { printLength } from '../../src/measure/index.ts';
import { demoTexts, sheetsOf, words } from './demos.ts';

interface Line {
  readonly number: number;
  readonly icon: string;
  readonly marks: readonly {
    readonly where: string;
    readonly figure: { readonly whole: string; readonly numerator?: string; readonly denominator?: string };
  }[];
}

const { packet, sheets } = sheetsOf('sedge-washroom', demoTexts['sedge-washroom']!, ['saw-list']);
const cuts = packet.surfaces[0]!.cuts;
const zones = sheets.flatMap(
  ({ data }) => (data as { zones?: { fences: { lines: Line[] }[]; marked: Line[] }[] }).zones ?? [],
);
const marked = zones.flatMap((zone) => zone.marked);
const lines = [...zones.flatMap(({ fences }) => fences.flatMap((fence) => fence.lines)), ...marked];
const inPrint = ({ figure: { whole, numerator, denominator } }: Line['marks'][number]) =>
  `${[whole, numerator ? `${numerator}/${denominator}` : ''].filter(Boolean).join(' ')} in`;

describe('hexagons on the saw list, which stand on a point', () => {
  test('say of each size up from the point which point it is measured from', () => {
    const told = lines.flatMap(({ number, marks }) => {
      const { sizes, fences } = cuts.find((cut) => cut.number === number)!;
      const byHand = sizes.filter(
        ({ exact, from }) => !fences.some((one) => one.exact === exact && one.on === from),
      );
      return byHand
        .filter(({ from }) => from === 'bottom' || from === 'top')
        .map(({ saw }) => marks.find((mark) => inPrint(mark) === printLength(saw, packet.spec.print))?.where);
    });
    expect(told.length).toBeGreaterThan(8);
    expect(told.filter((where) => !/from the (lower|upper) point$/.test(where ?? ''))).toEqual([]);
  });

  test('have two sizes at least where no fence gives the line', () => {
    expect(marked.length).toBeGreaterThan(5);
    expect(marked.filter(({ marks }) => marks.length < 2).map(({ number }) => number)).toEqual([]);
  });

  test('tell what a level cut leaves of their flat sides, which begin half a side over the point', () => {
    const { length } = packet.spec.tiles[0]!;
    // A side of a regular hexagon is its width over the flats by √3: geometry.
    const half = length / Math.sqrt(3) / 2;
    const level = marked.flatMap(({ number, marks }) => {
      const { sizes, taper, kind } = cuts.find((cut) => cut.number === number)!;
      const [size] = sizes;
      return kind === 'rip' && taper === 0 && size!.exact < 3 * half ? [{ size: size!, marks }] : [];
    });
    expect(level.length).toBeGreaterThan(1);
    for (const { size, marks } of level) {
      const kept = Math.floor((size.exact - half + 2) / packet.spec.print.step) * packet.spec.print.step;
      expect(marks.map(inPrint)).toEqual([size.saw, kept].map((one) => printLength(one, packet.spec.print)));
      expect(marks[1]!.where).toBe('each cut side keeps');
    }
  });

  test('have what they are measured from heavy on the icon of every cut without a fence', () => {
    expect(marked.filter(({ icon }) => !/stroke-width="1"/.test(icon)).map(({ number }) => number)).toEqual(
      [],
    );
  });
});

describe.each(Object.keys(demoTexts))('the head over what %s marks by hand', (slug) => {
  const made = sheetsOf(slug, demoTexts[slug]!, ['saw-list']);
  const { shape } = made.packet.spec.tiles[0]!;
  const all = made.sheets.flatMap(
    ({ data }) => (data as { zones?: { from: string; marked: Line[] }[] }).zones ?? [],
  );

  test('says from the point where the heavy bar only touches one', () => {
    for (const { from, marked: own } of all.filter((zone) => zone.marked.length > 0)) {
      const fromPoint = own.flatMap(({ marks }) => marks.map(({ where }) => /point|keeps/.test(where)));
      const told = words.say('en')('sheet.saw-list.marked', { from });
      expect(/\bpoint\b/.test(told)).toBe(fromPoint.includes(true));
      expect(/\bedge\b/.test(told)).toBe(fromPoint.includes(false));
      if (!shape) expect(from).toBe('edge');
    }
  });
});

test('in Spanish no size at the saw is called by the word for stop', () => {
  const say = words.say('es');
  const at = [
    'length',
    'width',
    'bottomLength',
    'topLength',
    'leftLength',
    'rightLength',
    'cornerAcross',
    'cornerUp',
  ];
  expect(
    at.map((what) => say(`sheet.saw-list.at.${what}`)).filter((where) => /\balto\b/i.test(where)),
  ).toEqual([]);
});
