import { describe, expect, test } from 'vitest';
import { sheetTexts } from '../cases/support/sheetTexts.ts';
import { areaOf } from '../support/Judged.ts';
import { floorJob, patternPacket } from './support/patternFloors.ts';

const strips = { band: { read: '11 7/8 in x 3 7/8 in' }, line: { read: '11 7/8 in x 1 7/8 in' } };

const floors = [
  floorJob('two butted courses', {
    tile: { field: { read: '11 7/8 in x 11 7/8 in' }, ...strips },
    joint: '1/8 in',
    pattern: 'straight',
    border: [
      { tile: 'line', corners: 'butted' },
      { tile: 'band', width: '3 in', corners: 'butted', 'runs through': 'left' },
    ],
  }),
  floorJob('herringbone in a border', {
    tile: { field: { read: '11 7/8 in x 3 7/8 in' }, ...strips },
    joint: '1/8 in',
    pattern: { herringbone: 'single', turned: 45 },
    border: [{ tile: 'band', width: 'solve' }],
  }),
  floorJob('four sizes round an inlay', {
    tile: {
      large: { read: '7 7/8 in x 11 7/8 in' },
      square: { read: '7 7/8 in x 7 7/8 in' },
      half: { read: '3 7/8 in x 7 7/8 in' },
      small: { read: '3 7/8 in x 3 7/8 in' },
      ...strips,
    },
    joint: '1/8 in',
    pattern: 'four sizes',
    inlays: {
      rug: {
        rectangle: '32 in x 24 in',
        'from A-B': '12 in',
        'from F-A': '34 in',
        pattern: { herringbone: 'single', turned: 45, tile: 'band' },
        border: [{ tile: 'line' }],
      },
    },
  }),
].map((job) => {
  const packet = patternPacket(job);
  return [job.title, { job, packet, texts: sheetTexts(packet) }] as const;
});

/** Of a tile by its name. */
const numberOf = (tile: string) => Number(tile.slice(1));

describe.each(floors)('a %s', (_, { job, packet, texts }) => {
  const surface = packet.surfaces[0]!;

  test('needs of each tile as many as lie on it, those of the border too', () => {
    const laid = new Set(surface.pieces.map(({ tile }) => tile));
    expect(Object.keys(packet.tiles).sort()).toEqual([...laid].sort());
    for (const plan of Object.values(packet.tiles)) {
      const own = surface.pieces.filter(({ tile }) => tile === plan.tile);
      expect([plan.whole + plan.cut, plan.needed]).toEqual([own.length, plan.whole + plan.from.length]);
      const served = plan.from.flatMap(({ pieces }) => pieces.map(({ piece }) => piece));
      expect(served.sort()).toEqual(own.flatMap(({ id, whole }) => (whole ? [] : [id])).sort());
    }
  });

  test('has a name for each tile that is sawn, whatever its kind', () => {
    const names = Object.values(packet.tiles).flatMap(({ from }) => from.map(({ tile }) => tile));
    const inTurn = names.map(numberOf).sort((a, b) => a - b);
    expect(inTurn).toEqual(names.map((_, i) => i + 1));
    for (const { from } of Object.values(packet.tiles)) {
      const own = from.map(({ tile }) => numberOf(tile));
      expect(own).toEqual([...own].sort((a, b) => a - b));
    }
  });

  // Arithmetic: what no piece covers, as deep as the tile; the field's own joints go by its repeat.
  test('asks for grout by the joints of the field, of the border and between them', () => {
    const sum = (shapes: readonly { readonly shape: Parameters<typeof areaOf>[0] }[]) =>
      shapes.reduce((all, { shape }) => all + areaOf(shape), 0);
    const floor = surface.field.reduce((all, shape) => all + areaOf(shape), 0);
    const open = floor - sum(surface.pieces) - sum(surface.left);
    const litres = (open * job.tiles[0]!.thickness) / 320 ** 3 / 1e6;
    const grout = packet.materials.find(({ what }) => what === 'grout')!;
    expect(grout.amount / (litres * job.products.grout.kgPerLitre * 1.1)).toBeCloseTo(1, 1);
  });

  test.runIf(surface.inlays)('tells what its inlay is made of, and where its edge is snapped', () => {
    expect(texts['layout-plan']).toContain('Inlay rug: Herringbone, 45° to A-B');
    expect(texts['set-out']).toContain(
      'Inlay rug: snap its edge, near corner 1 ft off A-B and 2 ft 10 in off F-A',
    );
    expect(surface.pieces.filter(({ border }) => border?.inlay === 'rug').length).toBeGreaterThan(20);
    const { chalk } = surface.inlays![0]!;
    for (const { name } of chalk!.lines)
      expect(texts['set-out']).toContain(`Inlay rug, line ${name}: mark its side`);
    expect(texts['set-out']).toContain(`Inlay rug: set tile ${chalk!.firstPiece} first`);
    expect(texts['set-out']).toMatch(/along the zigzag: every .* a corner of a tile that lies as R-/);
  });

  test.runIf(surface.border)(
    'tells on its plan what the border is made of, on its set-out where its inner edge is snapped',
    () => {
      const [line] = surface.border!.lines;
      expect(surface.border!.lines.map(({ edge }) => edge)).toEqual([
        'A-B',
        'B-C',
        'C-D',
        'D-E',
        'E-F',
        'F-A',
      ]);
      expect(line!.off).toBe(2032 + surface.border!.depth);
      expect(texts['layout-plan']).toMatch(/Border.*(mitered|butted)/);
      for (const { corners, through } of surface.border!.courses)
        if (corners === 'butted') expect(texts['layout-plan']).toContain(`runs through on the ${through}`);
      expect(texts['set-out']).toContain('Border along walls A-B, B-C, C-D, D-E, E-F, F-A');
    },
  );

  test('has its sheets, with a word for all that is said on them', () => {
    expect(Object.keys(texts).length).toBeGreaterThan(15);
    expect(
      Object.values(texts).flatMap(
        (text) => text.match(/.{0,60}(undefined|NaN|\bfault\.\w+|border:[A-Z]).{0,20}/g) ?? [],
      ),
    ).toEqual([]);
  });
});
