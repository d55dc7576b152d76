import { describe, expect, test } from 'vitest';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../../src/measure/index.ts';
import { foundLines } from '../../src/sheets/foundLines.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { setOutFigures } from '../../src/sheets/setOutFigures.ts';
import { uncheckedCuts } from '../../src/sheets/uncheckedCuts.ts';
import { demos, words } from './demos.ts';
import { spokenRows } from './spokenRows.ts';

const floors = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.map((surface) => {
    const { chalk, name } = surface;
    const later = (chalk.later ?? []).flatMap(({ lines }) => lines);
    return { slug, name, packet, surface, lines: [...chalk.lines, ...(chalk.further ?? []), ...later] };
  }),
);
const contextOf = (packet: (typeof demos)[number]['packet'], lang = 'en') =>
  sheetContext(packet, { lang, say: words.say(lang) });

/** What a row of the set-out says of each mark, in order, with the distance from its other end. */
function toldOf({ packet, surface, lines }: (typeof floors)[number], lang = 'en') {
  const figures = setOutFigures(contextOf(packet, lang), surface, []);
  const rows = [...figures.lines, ...figures.later.flatMap((one) => one.lines)];
  return lines.flatMap(({ name, marks }) =>
    marks.map((mark, i) => {
      const told = rows.find((row) => row.name === name)!.marks[i]!;
      const far = mark.both?.find(({ end, distance }) => end !== mark.end || distance !== mark.distance);
      return { ...told, rest: far?.distance };
    }),
  );
}

describe.each(floors)('the checks of the set-out of $slug, $name', (floor) => {
  const { packet } = floor;
  const least = packet.spec.print.system === 'mm' ? 5 * TICKS_PER_MM : TICKS_PER_INCH / 4;

  test('tape nothing that a hook hides: a mark on a corner is told so, one beside it has no check from there', () => {
    for (const { from, distance, other, rest } of toldOf(floor)) {
      expect(`${from} ${distance}`).not.toMatch(/: 0 (?:mm|in)/);
      expect(other).not.toMatch(/: 0 (?:mm|in)/);
      if (rest === undefined || rest >= least) continue;
      if (rest >= packet.rounding.step) expect(other).toBe('');
      else expect(other === '' || other.startsWith('at ')).toBe(true);
    }
  });
});

test('a cut of the size of those beside it, on the same joint, goes with the row that tells these', () => {
  const kitchen = floors.find(({ slug }) => slug === 'quarry-kitchen')!.surface;
  const beside = (id: string, edge: string) => {
    const { cut, zone } = kitchen.pieces.find((piece) => piece.id === id)!;
    const { found } = kitchen.zones[zone - 1]!;
    return found.filter((one) => one.edge === edge && one.cuts.includes(cut!)).map(({ row }) => row);
  };
  expect(beside('M5-6', 'B-C')).toContain('LM4');
  expect(beside('L5-23', 'F-A')).toContain('LM4');
});

test('what a demo has of both kinds: a mark on a corner, and one a hair beside a cabinet', () => {
  const told = floors.flatMap((floor) => toldOf(floor));
  expect(told.map(({ other }) => other)).toContain('at corner C (both: 1149 mm)');
  expect(told.filter(({ rest, other }) => rest !== undefined && other === '').length).toBeGreaterThan(0);
  for (const lang of words.languages)
    for (const { other } of floors.flatMap((floor) => toldOf(floor, lang)))
      expect(other, lang).not.toMatch(/: 0 mm/);
});

describe.each(floors)('found spaces of $slug, $name', ({ packet, surface }) => {
  test('are told of rows in one direction at a time', () => {
    const axisOf = new Map(surface.rows.map(({ id, axis }) => [id, axis]));
    for (const zone of surface.zones)
      for (const { rows } of foundLines(contextOf(packet), surface, zone)) {
        expect(new Set(spokenRows(rows).map((row) => axisOf.get(row))).size, rows).toBe(1);
      }
  });

  test('hold every cut at a wall or another straight face, or the sheet says which have none', () => {
    const straight = new Set(surface.edges.map(({ id }) => id));
    for (const zone of surface.zones.filter(({ found }) => found.length > 0)) {
      const own = surface.pieces.filter(({ id }) => zone.pieces.includes(id));
      const none = uncheckedCuts(surface, zone, words.say('en')).split(' · ');
      for (const { id, cut, edges } of own)
        for (const edge of edges.filter((one) => cut !== null && straight.has(one))) {
          const name = edge.replace(/[.:].*$/, '');
          const isTold = zone.found.some((one) => one.edge?.startsWith(name) && one.cuts.includes(cut!));
          const isNone = none.some(
            (one) => one.startsWith(name) && one.split(/\D+/).some((at) => Number(at) === cut),
          );
          expect(isTold || isNone, `${id} at ${edge}`).toBe(true);
        }
    }
  });

  test.each(words.languages)(
    'tell both ends of a row apart, those between the sides of a doorway too: %s',
    (lang) => {
      for (const zone of surface.zones) {
        const told = foundLines(contextOf(packet, lang), surface, zone).flatMap(({ rows, edge }) =>
          spokenRows(rows).map((row) => `${row} ${edge}`),
        );
        expect(new Set(told).size).toBe(told.length);
      }
    },
  );
});
