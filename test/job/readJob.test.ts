import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import { starterJob } from '../../src/job/starterJob.ts';

const IN = 8128;
const FT = 12 * IN;
const MM = 320;

const HEAD = 'title: Test\nrevision: {date: 2027-03-01}\n';
const TILE = 'tile: {field: {read: 12 in x 12 in}}\njoint: 1/8 in\n';
const WALLS = '  walls: {A-B: 10 ft, B-C: 8 ft, C-D: 10 ft, D-A: 8 ft}\n';

function job(floor = '', rest = '', tile = TILE): Job {
  const { job: made, problems } = readJob(
    `${HEAD}${tile}floor:\n${WALLS}${floor}${rest}`,
    'job.yaml',
    'test',
  );
  expect(problems).toEqual([]);
  return made!;
}

const floor = (text: string) => job(text).surfaces[0]!;

describe('tiles', () => {
  const tile = (text: string) => job('', '', `tile: {field: {${text}}}\njoint: 3 mm\n`).tiles[0]!;

  test('one reading stands for itself', () => {
    expect(tile('read: 12 in x 24 in')).toMatchObject({ length: 12 * IN, width: 24 * IN, spread: 0 });
  });

  test('a tile whose sides the tape does not tell apart is square: one mean and one spread of all readings', () => {
    const read = tile('read: [300 mm x 300 mm, 301 mm x 300 mm, 300.5 mm x 302 mm]');
    expect(read.readings).toHaveLength(3);
    expect(read).toMatchObject({
      length: Math.round((MM * (300 + 301 + 300.5 + 300 + 300 + 302)) / 6),
      width: Math.round((MM * (300 + 301 + 300.5 + 300 + 300 + 302)) / 6),
      spread: 2 * MM,
    });
  });

  test('of a tile longer than wide each side has its own mean, and the larger spread counts', () => {
    const read = tile('read: [600 mm x 300 mm, 601 mm x 300 mm]');
    expect(read).toMatchObject({ length: 600.5 * MM, width: 300 * MM, spread: MM });
  });

  test('a lot number keeps its zero, with or without quotation marks', () => {
    expect(tile('read: 12 in x 12 in, box: {pieces: 11, lot: 0417}').box?.lot).toBe('0417');
    expect(tile('read: 12 in x 12 in, box: {pieces: 11, lot: "0417"}').box?.lot).toBe('0417');
  });

  test('stone is not glazed unless the file says so', () => {
    expect(tile('read: 12 in x 12 in, material: stone').glazed).toBe(false);
    expect(tile('read: 12 in x 12 in, material: stone, glazed: yes').glazed).toBe(true);
  });
});

describe('walls', () => {
  test('a single reading, a list of them, and the longer form say the same', () => {
    const forms = ['A-B: 10 ft', 'A-B: [10 ft]', 'A-B: {read: 10 ft}', 'A-B: {read: [10 ft]}'];
    const walls = forms.map((form) => {
      const text = `${HEAD}${TILE}floor: {walls: {${form}, B-C: 8 ft, C-A: 6 ft}}`;
      return readJob(text, 'job.yaml', 'test').job?.surfaces[0]?.walls[0];
    });
    expect(walls[0]).toMatchObject({ id: 'A-B', from: 'A', to: 'B', readings: [10 * FT] });
    for (const wall of walls) expect(wall).toEqual(walls[0]);
  });

  test.each([
    ["8'2 1/4", 98.25 * IN],
    [`8'2 1/4"`, 98.25 * IN],
    ['98 1/4"', 98.25 * IN],
    ['8′ 2¼″', 98.25 * IN],
    ['2.495 m', 2495 * MM],
  ])('YAML leaves %s as it is', (text, ticks) => {
    const read = readJob(
      `${HEAD}${TILE}floor: {walls: {A-B: ${text}, B-C: 8 ft, C-A: 6 ft}}`,
      'job.yaml',
      'test',
    );
    expect(read.job?.surfaces[0]?.walls[0]?.readings).toEqual([ticks]);
  });

  test('a corner is square unless an angle is told', () => {
    const corners = floor('  angles: {D: 270}\n').corners;
    expect(corners.map(({ angleDeg }) => angleDeg)).toEqual([90, 90, 90, 270]);
  });

  test('base board covers 1/2 in, everything else a 1/16 in more than the gap', () => {
    const text = `${HEAD}${TILE}floor: {walls: {A-B: 9 ft, B-C: {read: 8 ft, meets: tub}, C-A: {read: 6 ft, gap: 5/8 in}}}`;
    const gaps = readJob(text, 'job.yaml', 'test').job?.surfaces[0]?.walls.map(({ gap, gapMax }) => [
      gap,
      gapMax,
    ]);
    expect(gaps).toEqual([
      [IN / 4, IN / 2],
      [IN / 4, (5 / 16) * IN],
      [(5 / 8) * IN, (5 / 8) * IN],
    ]);
  });
});

describe('doorways', () => {
  const door = (text: string) =>
    floor(`  doorways: {hall: {in: D-A, from D: 9 in, clear: 30 in, ${text}}}\n`).doorways[0]!;

  test('an undercut side is hidden and covers what slides in, less 1/8 in', () => {
    expect(door('left: undercut 3/4 in').left).toEqual({
      kind: 'undercut',
      tuck: (3 / 4) * IN,
      facts: { meets: 'casing', gap: IN / 4, gapMax: (5 / 8) * IN, touch: false, seen: 'hidden' },
    });
  });

  test('a post has its width along the wall and its depth into it, in either form', () => {
    const short = door('right: post 1 1/2 in x 3 1/2 in').right;
    expect(short).toMatchObject({ kind: 'post', width: 1.5 * IN, depth: 3.5 * IN, facts: { meets: 'post' } });
    expect(door('right: {post: 1 1/2 in x 3 1/2 in}').right).toEqual(short);
    expect(door('right: {post: 1 1/2 in x 3 1/2 in, gap: 1/8 in}').right.facts.gap).toBe(IN / 8);
  });

  test('the door line lies in the middle of the wall unless told', () => {
    expect(door('wall: 5 in').doorLine).toBe(2.5 * IN);
    expect(door('wall: 5 in, door line: 0 in').doorLine).toBe(0);
  });

  test('a doorway that is alone is the only way out', () => {
    expect(door('beyond: wood').onlyExit).toBe(true);
    expect(door('only exit: no').onlyExit).toBe(false);
  });

  test('a wall may be named from its other end', () => {
    const read = floor('  doorways: {hall: {in: a-d, from A: 9 in, clear: 30 in}}\n').doorways[0];
    expect(read).toMatchObject({ wall: 'D-A', fromCorner: 'A', from: 9 * IN });
  });
});

describe('obstacles', () => {
  const obstacle = (text: string) => floor(`  obstacles: {${text}}\n`).obstacles[0]!;

  test('a circle stands at its distances from two walls', () => {
    expect(obstacle('flange: {circle: 7 in, from A-B: 15 in, from B-C: 16 3/4 in}')).toMatchObject({
      meets: 'flange',
      seen: 'hidden',
      shape: {
        kind: 'circle',
        diameter: 7 * IN,
        from: [
          { wall: 'A-B', distance: 15 * IN },
          { wall: 'B-C', distance: 16.75 * IN },
        ],
      },
    });
  });

  test('the first size of a rectangle runs along the first wall named', () => {
    const read = obstacle('sink cabinet: {rectangle: 24 in x 36 in, from D-A: 12 in, from A-B: 0 in}');
    expect(read).toMatchObject({
      meets: 'cabinet',
      shape: { along: 24 * IN, out: 36 * IN, from: [{ wall: 'D-A' }, { wall: 'A-B' }] },
    });
  });

  test('each point of a polygon is two distances', () => {
    const read = obstacle('hearth: {polygon: [[1 ft, 1 ft], [3 ft, 1 ft], [1 ft, 2 ft]], from: [A-B, D-A]}');
    expect(read).toMatchObject({ meets: 'hearth', shape: { kind: 'polygon', walls: ['A-B', 'D-A'] } });
    expect(read.shape).toHaveProperty('points', [
      [FT, FT],
      [3 * FT, FT],
      [FT, 2 * FT],
    ]);
    expect(read.shape).not.toHaveProperty('rises');
  });

  test('a third value of a point is the middle of the side that leads on, out of the obstacle or in', () => {
    const read = obstacle(
      'island: {polygon: [[1 ft, 1 ft, 1 in out], [3 ft, 1 ft], [1 ft, 2 ft, 2 in in]], from: [A-B, D-A]}',
    );
    expect(read.shape).toHaveProperty('rises', [IN, 0, -2 * IN]);
  });
});

describe('pattern', () => {
  const pattern = (text: string) => floor(`  pattern: ${text}\n`).pattern;

  test.each([
    ['straight', { name: 'straight', turnedDeg: 0, along: 'A-B', tile: 'field' }],
    ['{straight, turned: 45}', { name: 'straight', turnedDeg: 45 }],
    ['{straight: {turned: 45, along: B-C}}', { name: 'straight', turnedDeg: 45, along: 'B-C' }],
    ['{straight, along: c-b}', { along: 'B-C' }],
    [
      '{straight, along: shared taper}',
      { along: { kind: 'shared', near: 'A-B', least: 12 * IN, focalWeight: 2 } },
    ],
    ['{straight, along: shared near d-c}', { along: { kind: 'shared', near: 'C-D' } }],
    ['{straight, along: from B to D-A}', { along: { kind: 'sight', from: 'B', to: 'D-A' } }],
    ['{running: 2/6}', { name: 'running', offset: { numerator: 1, denominator: 3 }, stepping: 'stepping' }],
    ['running 1/2', { name: 'running', offset: { numerator: 1, denominator: 2 } }],
    ['{running: 8 in}', { name: 'running', offset: { length: 8 * IN } }],
    [
      '{running: 1/2, turned: 45, along: B-C, alternating: yes, tile: field}',
      { along: 'B-C', turnedDeg: 45, stepping: 'alternating' },
    ],
  ])('%s', (text, expected) => {
    expect(pattern(text)).toMatchObject(expected);
  });
});

describe('start', () => {
  const start = (text: string) =>
    floor(`  start: {along: ${text}}\n  doorways: {hall: {in: D-A, from D: 9 in, clear: 30 in}}\n`).start
      .along;

  test.each([
    ['best', { kind: 'best' }],
    ['joint on hall', { kind: 'joint', on: 'hall' }],
    ['tile on A-B', { kind: 'tile', on: 'A-B' }],
    ['centered between A-B and C-D', { kind: 'centred', between: ['A-B', 'C-D'] }],
    ['joint centred between D-C and B-A', { kind: 'centred', between: ['C-D', 'A-B'], what: 'joint' }],
    ['tile centred between hall and B-C', { kind: 'centred', between: ['hall', 'B-C'], what: 'tile' }],
    ['cut of 5 1/2 in at A-B', { kind: 'cut', size: 5.5 * IN, at: 'A-B' }],
  ])('%s', (text, expected) => {
    expect(start(text)).toEqual(expected);
  });
});

describe('zones', () => {
  test.each([
    ['2', { kind: 'count', count: 2 }],
    ['auto', { kind: 'auto' }],
    ['{from A-B: [5 ft, 40 in]}', { kind: 'splits', from: 'A-B', at: [40 * IN, 5 * FT] }],
    ['{from A-B: 40 in}', { kind: 'splits', from: 'A-B', at: [40 * IN] }],
  ])('%s', (text, expected) => {
    expect(floor(`  zones: ${text}\n`).zones).toEqual(expected);
  });
});

describe('base', () => {
  const base = (text: string) =>
    job('', `base: {below: boards, removed: {sheet vinyl: 1/8 in}, ${text}}\n`).base;

  test('a height is found on its layer, by its full name or a word of it', () => {
    const { heights } = base(
      'heights: {flange: 1/4 in above vinyl, hall door: 1 in above base, hall floor: 3/4 in below boards}',
    );
    expect(heights).toEqual([
      { name: 'flange', kind: 'flange', height: IN / 4, above: 'sheet vinyl' },
      { name: 'hall door', kind: 'door', height: IN, above: 'boards' },
      { name: 'hall floor', kind: 'floor', height: -0.75 * IN, above: 'boards' },
    ]);
  });

  test('an appliance says what it needs', () => {
    const { heights } = base('heights: {dishwasher: {height: 34 1/2 in, needs: 33 7/8 in, above: base}}');
    expect(heights).toEqual([
      { name: 'dishwasher', kind: 'appliance', height: 34.5 * IN, above: 'boards', wanted: 33.875 * IN },
    ]);
  });

  test('flatness, cracks, joints and what comes out', () => {
    const read = base(
      'flatness: 3/16 in under 10 ft at the door, cracks: {hearth: moving}, joints: {from A-B: 4 ft}, comes out: {toilet: plumber}',
    );
    expect(read).toMatchObject({
      flatness: [{ gap: (3 / 16) * IN, under: 10 * FT, where: 'the door' }],
      cracks: [{ where: 'hearth', moving: true }],
      joints: [{ wall: 'A-B', distance: 4 * FT }],
      comesOut: [{ what: 'toilet', who: 'plumber' }],
    });
    expect(base('comes out: [toilet, doors]').comesOut).toEqual([{ what: 'toilet' }, { what: 'doors' }]);
  });
});

describe('products', () => {
  const products = (text: string) => job('', `products: {${text}}\n`).products;

  test("a product's own figures are told apart from our defaults", () => {
    const { mortar } = products('mortar: {bag: 20 kg, covers: 6-8 m2, back butter: yes}');
    expect(mortar).toMatchObject({ bagKg: 20, coversM2: [6, 8], backButter: true, potLifeHours: 1.5 });
    expect(mortar.stated).toEqual(['bagKg', 'coversM2', 'backButter']);
  });

  test('sealing opens when the sheet says so, else after 4 to 6 days', () => {
    expect(products('grout: {seal after: 72 h}').grout.sealAfterHours[0]).toBe(72);
    expect(products('grout: {kind: cement}').grout.sealAfterHours).toEqual([96, 144]);
    expect(products('grout: {seal after: 4-6 days}').grout.sealAfterHours).toEqual([96, 144]);
  });

  test('epoxy grout asks for no sealer', () => {
    expect(products('grout: {kind: epoxy}').sealer.kind).toBe('none');
  });

  // Arithmetic of common practice: what is porous is sealed before grouting, whatever the grout (common practice, no source).
  test.each([
    ['stone', 'epoxy', 'penetrating'],
    ['cement', 'epoxy', 'penetrating'],
    ['porcelain', 'epoxy', 'none'],
    ['porcelain', 'cement', 'penetrating'],
  ])('%s with %s grout: sealer %s', (material, grout, kind) => {
    const tile = `tile: {field: {read: 12 in x 12 in, material: ${material}}}\njoint: 1/8 in\n`;
    expect(job('', `products: {grout: {kind: ${grout}}}\n`, tile).products.sealer.kind).toBe(kind);
  });

  test('what a bottle covers goes by its content', () => {
    expect(products('sealer: {bottle: 500 ml, covers: 10 m2}').sealer.coversM2PerLitre).toBeCloseTo(20);
  });
});

describe('units', () => {
  test('those of the first length are those of the job, and of its paper', () => {
    const text = `${HEAD}tile: {field: {read: 300 mm x 300 mm}}\njoint: 3 mm\nfloor: {walls: {A-B: 3 m, B-C: 3 m, C-A: 3 m}}`;
    const read = readJob(text, 'job.yaml', 'test').job!;
    expect(read.print).toMatchObject({ system: 'mm', paper: 'a4', step: MM });
    expect(read.surfaces[0]?.walls[0]).toMatchObject({ gap: 6 * MM, gapMax: 12 * MM });
    expect(job().print).toMatchObject({ system: 'inches', paper: 'letter', step: IN / 16 });
  });
});

describe('several floors', () => {
  test('each keeps its name', () => {
    const text = `${HEAD}${TILE}floors:\n  hall: {walls: {A-B: 3 m, B-C: 3 m, C-A: 3 m}}\n  pantry: {walls: {A-B: 2 m, B-C: 2 m, C-A: 2 m}}\n`;
    expect(readJob(text, 'job.yaml', 'test').job?.surfaces.map(({ name }) => name)).toEqual([
      'hall',
      'pantry',
    ]);
  });
});

describe('text', () => {
  test('is never taken for anything else', () => {
    const text = `title: <script>alert(1)</script>\nowner: No\nplace: 12\nrevision: {date: 2027-03-01}\n${TILE}floor:\n${WALLS}`;
    expect(readJob(text, 'job.yaml', 'test').job).toMatchObject({
      title: '<script>alert(1)</script>',
      owner: 'No',
      place: '12',
    });
  });

  test('that is left blank counts as not written', () => {
    const read = job('  diagonals:\n', 'products:\ncontacts: {phone: }\n');
    expect(read.contacts).toEqual({});
    expect(read.surfaces[0]?.diagonals).toEqual([]);
  });
});

describe('the file that a new job begins with', () => {
  test.each(['inches', 'mm'] as const)('reads without problems in %s', (system) => {
    const { job: made, problems } = readJob(starterJob('1957', system), 'job.yaml', '1957');
    expect(problems).toEqual([]);
    expect(made?.title).toBe('1957');
    expect(made?.print.system).toBe(system);
  });

  test.each(['inches', 'mm'] as const)('reads with every noted line in use, in %s', (system) => {
    const keys =
      'house|access|picture|bow|material|glazed|box|angles|gap|cabinet|hearth|flatness|cracks|joints|heated|comes|sealer|sealant|saw|offcuts|waste';
    const used = starterJob('a', system).replace(new RegExp(`^( *)# (?=(?:${keys})\\b.*:)`, 'gm'), '$1');
    const { job: made, problems } = readJob(used, 'job.yaml', 'a');
    expect(problems).toEqual([]);
    expect(made?.surfaces[0]?.obstacles).toHaveLength(3);
  });
});

describe('demo jobs', () => {
  const JOBS = join(import.meta.dirname, '..', '..', 'jobs');

  test.each(readdirSync(JOBS))('%s reads without problems', (slug) => {
    expect(readJob(readFileSync(join(JOBS, slug, 'job.yaml'), 'utf8'), slug, slug).problems).toEqual([]);
  });
});

describe('whatever the text, reading never throws', () => {
  const long = process.env.LONG === '1';
  const start = starterJob('any', 'inches');
  const snippet = fc.constantFrom(
    '"',
    "'",
    '[',
    '{',
    '}',
    ':',
    '\t',
    '\n- ',
    '#',
    '&a ',
    '*a',
    '!!set ',
    '0',
    '-1',
    '<script>',
    '? ',
    '|',
    '\u0000',
    '__proto__: 1\n',
    'null',
    '{a: 1}',
    '[]',
  );

  test('after any edit of a good file', () => {
    const edit = fc.record({
      at: fc.nat(start.length),
      out: fc.nat(30),
      put: fc.oneof(snippet, fc.string({ maxLength: 6 })),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        const text = edits.reduce(
          (now, { at, out, put }) => now.slice(0, at) + put + now.slice(at + out),
          start,
        );
        const { job: made, problems } = readJob(text, 'job.yaml', 'any');
        expect(made === undefined).toBe(problems.length > 0);
        for (const { line, column } of problems) expect(line! > 0 && column! > 0).toBe(true);
      }),
      { seed: 41, numRuns: long ? 20_000 : 150 },
    );
  });

  test('with any value behind any key', () => {
    const keys = [...start.matchAll(/^ *([a-zA-Z-][\w -]*):/gm)].map((match) => ({
      at: match.index,
      all: match[0],
    }));
    const value = fc.oneof(
      snippet,
      fc.json({ maxDepth: 2 }),
      fc.constantFrom('', '5', '8 ft', 'yes', 'A-B', '[1, 2]', '{x: {y: 1}}'),
    );
    fc.assert(
      fc.property(fc.nat(keys.length - 1), value, (which, put) => {
        const { at, all } = keys[which]!;
        const end = start.indexOf('\n', at);
        const text = `${start.slice(0, at)}${all} ${put}${start.slice(end)}`;
        const { job: made, problems } = readJob(text, 'job.yaml', 'any');
        expect(made === undefined).toBe(problems.length > 0);
      }),
      { seed: 42, numRuns: long ? 20_000 : 150 },
    );
  });

  test.each([
    [
      'aliases that multiply',
      `a: &a [1,1,1,1,1,1,1,1,1]\n${'bcdefgh'
        .split('')
        .map((name, i) => `${name}: &${name} [${Array(9).fill(`*${'abcdefg'[i]}`).join(',')}]`)
        .join('\n')}`,
    ],
    ['an alias of itself', 'title: &a [*a]'],
    ['brackets without end', '['.repeat(20_000)],
    ['a very long file', `title: ${'x'.repeat(600_000)}`],
    ['no text at all', '\u0000\u0001'],
  ])('%s', (_name, text) => {
    expect(readJob(text, 'job.yaml', 'any').problems.length).toBeGreaterThan(0);
  });
});
