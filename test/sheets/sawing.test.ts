import { describe, expect, test } from 'vitest';
import { figure } from '../../src/measure/index.ts';
import { demos } from './demos.ts';

interface Line {
  readonly number: number;
  readonly pieces: readonly string[];
  /** Further settings of the fence. */
  readonly next?: readonly unknown[];
  /** Sizes marked by hand, each with the edge of the tile that it is marked on. */
  readonly marks?: readonly { readonly where: string; readonly figure: unknown }[];
}
interface SawZone {
  readonly fences: readonly { readonly setting: unknown; readonly lines: readonly Line[] }[];
  readonly marked: readonly Line[];
}

/** The cards or lines of a sheet, one a cut. */
function linesOf(sheets: (typeof demos)[number]['sheets'], template: string): readonly Line[] {
  const data = sheets.filter((sheet) => sheet.template === template).map((sheet) => sheet.data);
  return data.flatMap((one) => {
    const { cards = [], cuts = [], zones = [] } = one as { cards?: Line[]; cuts?: Line[]; zones?: SawZone[] };
    return [
      ...cards,
      ...cuts,
      ...zones.flatMap(({ fences, marked }) => [...fences.flatMap(({ lines }) => lines), ...marked]),
    ];
  });
}

/** What each sheet asks to be sawn, as cut number and piece. */
function asked(sheets: (typeof demos)[number]['sheets'], template: string): string[] {
  const lines = linesOf(sheets, template);
  return lines.flatMap(({ number, pieces }) => pieces.map((piece) => `${number} ${piece}`)).sort();
}

/** Tiles by the numbers in their names. */
const byName = ([one]: readonly unknown[], [other]: readonly unknown[]) =>
  Number(String(one).slice(1)) - Number(String(other).slice(1));

/** A line of the saw list tile by tile. */
interface TileLine {
  readonly tile: string;
  readonly parts: readonly { readonly piece: string; readonly number: number }[];
}

describe.each(demos)('what $slug asks to be sawn', ({ packet, sheets }) => {
  const pieces = packet.surfaces.flatMap((surface) => surface.pieces.filter(({ whole }) => !whole));
  const wanted = pieces.map(({ id, cut }) => `${cut} ${id}`).sort();

  test('every cut piece stands once on a card or in the saw list', () => {
    expect([...asked(sheets, 'hard-cuts'), ...asked(sheets, 'saw-list')].sort()).toEqual(wanted);
  });

  test('no line of the saw list names an edge twice: what is sawn at both ends has a card', () => {
    const twice = linesOf(sheets, 'saw-list').filter(
      ({ marks = [] }) => new Set(marks.map(({ where }) => where)).size < marks.length,
    );
    expect(twice.map(({ number }) => number)).toEqual([]);
  });

  test('every size of a cut without a card stands on its own line, under its fence setting or marked', () => {
    const { system } = packet.spec.print;
    const zones = sheets.flatMap(({ template, data }) =>
      template === 'saw-list' ? ((data as { zones?: SawZone[] }).zones ?? []) : [],
    );
    const printed = zones.flatMap(({ fences, marked }) => [
      ...fences.flatMap(({ setting, lines }) => lines.map((line) => ({ line, setting }))),
      ...marked.map((line) => ({ line, setting: null })),
    ]);
    const lost = printed.flatMap(({ line, setting }) => {
      const { sizes } = packet.surfaces
        .flatMap(({ cuts }) => cuts)
        .find(({ number }) => number === line.number)!;
      const told = [setting, ...(line.next ?? []), ...(line.marks ?? []).map(({ figure }) => figure)];
      const figures = told.map((figure) => JSON.stringify(figure));
      return sizes
        .map(({ saw }) => JSON.stringify(figure(saw, system)))
        .filter((size) => !figures.includes(size))
        .map((size) => `${line.number}: ${size}`);
    });
    expect(lost).toEqual([]);
  });

  test('the zone sheets tick each cut piece once', () => {
    expect(asked(sheets, 'zone')).toEqual(wanted);
  });

  test('all pieces are set in some zone', () => {
    const counts = sheets
      .filter(({ template }) => template === 'zone')
      .map(({ data }) => (data as { count: number }).count);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(
      packet.surfaces.flatMap((surface) => surface.pieces).length,
    );
  });

  test('the saw list tile by tile tells each tile that is sawn with its pieces, in the order of the zones', () => {
    const { byTile = [] } = (sheets.find(({ name }) => name === 'saw-list-by-tile')?.data ?? {}) as {
      byTile?: readonly {
        readonly tiles: readonly TileLine[];
        readonly last: readonly TileLine[];
      }[];
    };
    const told = byTile.flatMap(({ tiles, last }) =>
      [...tiles, ...last].map(({ tile, parts }) => [
        tile,
        parts.map(({ piece, number }) => `${number} ${piece}`).sort(),
      ]),
    );
    const shared = Object.values(packet.tiles).flatMap(({ from }) => from);
    const some = shared.some(({ pieces }) => pieces.length > 1);
    const planned = shared.map(({ tile, pieces }) => [
      tile,
      pieces.map(({ piece, cut }) => `${cut} ${piece}`).sort(),
    ]);
    expect([...told].sort(byName)).toEqual(some ? planned.sort(byName) : []);
    for (const { from } of some ? Object.values(packet.tiles) : []) {
      const own = from.map(({ tile }) => tile);
      expect(told.map(([tile]) => tile).filter((tile) => own.includes(tile as string))).toEqual(own);
    }
  });

  test('tiles are numbered and listed in the order in which the zones set their first pieces, whatever kind they are', () => {
    const [first] = packet.surfaces;
    const set = first!.zones.flatMap((zone) => zone.pieces);
    const lines = sheets.flatMap(({ name, data }) =>
      name === 'saw-list-by-tile'
        ? (data as { byTile: readonly Record<'tiles' | 'last', readonly TileLine[]>[] }).byTile.flatMap(
            ({ tiles, last }) => [...tiles, ...last],
          )
        : [],
    );
    const needed = lines.map(({ parts }) => Math.min(...parts.map(({ piece }) => set.indexOf(piece))));
    expect(needed).toEqual([...needed].sort((a, b) => a - b));
    expect(lines.map(({ tile }) => tile)).toEqual(lines.map((_, i) => `T${i + 1}`));
  });
});
