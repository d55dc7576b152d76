import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { heldAgainst } from '../../src/sheets/heldAgainst.ts';
import { isLaid } from '../../src/sheets/isLaid.ts';
import { limitName } from '../../src/sheets/limitName.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { lengthsApart, sayApart } from '../../src/sheets/sayApart.ts';
import { demos, demoTexts, sheetsOf, sheetsOnce, words } from './demos.ts';

interface Gate {
  readonly what: string;
  readonly bound?: string;
  readonly limit: string;
  readonly found: string;
  readonly state: string;
  readonly mark?: string;
  readonly signed?: boolean;
  readonly note: string;
  readonly held?: string;
}
type Made = Pick<(typeof demos)[number], 'sheets'>;
const dataOf = (made: Made, name: string) =>
  made.sheets.find(({ template }) => template === name)!.data as Record<string, unknown>;
const gatesOf = (made: Made) => dataOf(made, 'job-sheet').gates as Gate[];
const inMm = (slug: string) =>
  sheetsOnce(
    slug,
    demoTexts[slug]!.replace('units: inches', 'units: mm').replace(/saw step: [^,]*/, 'saw step: 1 mm'),
  );
const metric = Object.keys(demoTexts).map((slug) => inMm(slug));

describe('a limit', () => {
  // By arithmetic: what is no more than a most passes, and what is no less than a least.
  test('tells rightly whether it is a most or a least', () => {
    const held = [...demos, ...metric].flatMap(({ packet }) =>
      packet.limits.filter(({ found, limit }) => typeof found === 'number' && typeof limit === 'number'),
    );
    const houses = held.filter(({ rule }) => rule.startsWith('house.'));
    const bounded = held.filter((one) => !houses.includes(one));
    expect(bounded.length).toBeGreaterThan(50);
    expect(new Set(bounded.map(({ bound }) => bound))).toEqual(new Set(['most', 'least']));
    const wrong = bounded.filter(({ bound, found, limit, pass }) =>
      bound === 'most' ? pass !== found <= limit : pass !== found >= limit,
    );
    expect(wrong.map(({ rule }) => rule)).toEqual([]);
  });

  test.each([...demos, ...metric])(
    'says at most or at least beside every figure, and the result: $slug',
    (made) => {
      const say = words.say(made.sheets.find(({ template }) => template === 'job-sheet')!.lang);
      const compared = gatesOf(made).filter(({ limit, found }) => limit !== '' && found !== '');
      const judged = compared.filter(({ state }) => state !== 'open');
      expect(judged.length).toBeGreaterThan(5);
      expect(gatesOf(made).filter(({ limit, bound }) => limit !== '' && !bound)).toEqual([]);
      for (const { mark, state } of judged)
        expect(mark).toBe(say(state === 'pass' ? 'limit.pass' : 'limit.fail'));
      expect(gatesOf(made).filter(({ state, mark }) => state === 'open' && mark)).toEqual([]);
    },
  );

  test('that a bed misses is marked, though the trade only advises it', () => {
    const bed = words.say('en')('limit.trowel');
    const one = gatesOf(demos.find(({ slug }) => slug === 'linden-entry')!).find(({ what }) => what === bed)!;
    expect(one).toMatchObject({ state: 'advice', mark: 'FAILS LIMIT', bound: 'At least' });
  });

  test.each([...demos, ...metric])(
    'has a line to agree to it where its figure fails, and only there, before the floor is laid: $slug',
    (made) => {
      const say = words.say(made.sheets.find(({ template }) => template === 'job-sheet')!.lang);
      const isOpen = !isLaid(made.packet);
      for (const { mark, signed = false } of gatesOf(made))
        expect(signed).toBe(isOpen && mark === say('limit.fail'));
    },
  );

  test('that passes as the job is printed in inches passes printed in millimeters', () => {
    const failing = (made: (typeof demos)[number]) =>
      new Set(made.packet.limits.filter(({ pass }) => !pass).map(({ rule }) => rule));
    for (const made of metric) {
      const own = demos.find(({ slug }) => slug === made.slug)!;
      expect(failing(made), made.slug).toEqual(failing(own));
    }
  });

  test('is named with its tile where the job has more than one', () => {
    const names = gatesOf(demos.find(({ slug }) => slug === 'linden-entry')!).map(({ what }) => what);
    const twice = names.filter((name, i) => names.indexOf(name) !== i);
    expect(twice).toEqual([]);
    expect(names).toContain('Narrowest joint: Dark ash strip');
  });

  test('of a floor is named with it where the job has more than one', () => {
    const { packet } = demos[0]!;
    const two = { ...packet, surfaces: [packet.surfaces[0]!, packet.surfaces[0]!] };
    const limit = packet.limits.find(({ rule }) => rule === 'contact')!;
    const say = words.say('en');
    expect(limitName({ packet, say }, limit)).toBe(say('limit.contact'));
    expect(limitName({ packet: two, say }, limit)).toBe(`${say('limit.contact')}: ${limit.surface}`);
  });

  test('that is a stop says for which houses it holds, and what is not known is not found', () => {
    const stops = dataOf(demos.find(({ slug }) => slug === 'fernlea-boot-room')!, 'job-sheet')
      .stops as Gate[];
    expect(stops.map(({ held }) => held)).toEqual([
      'holds for houses up to 1980; this one: year not known',
      'holds for houses before 1978; this one: year not known',
    ]);
  });
});

/** Jobs with an undercut side: else no block is told. */
const undercutting = [...demos, ...metric].filter(({ packet }) =>
  packet.spec.surfaces.some(({ doorways }) =>
    doorways.some(({ left, right }) => [left, right].some(({ kind }) => kind === 'undercut')),
  ),
);

test.each(undercutting)('the block under the saw is as high as the undercut should be: $slug', (made) => {
  const [undercut] = gatesOf(made).filter(({ what }) =>
    words.languages.some((lang) => what === words.say(lang)('gate.undercut')),
  );
  // The first figure of the note is that of the block.
  expect(undercut!.note.indexOf(undercut!.limit)).toBeGreaterThan(0);
  expect(undercut!.note.search(/\d/)).toBe(undercut!.note.indexOf(undercut!.limit));
});

describe('two figures that are held against each other', () => {
  const context = (lang: string, slug = 'rowan-bath') =>
    sheetContext(demos.find((one) => one.slug === slug)!.packet, { lang, say: words.say(lang) });

  test('never print alike where one fails the other', () => {
    const joint = gatesOf(demos.find(({ slug }) => slug === 'rowan-bath')!).find(({ note }) =>
      note.includes('yours differ by'),
    )!;
    // A joint of 1/8 in over three is 0.0416 in; three times 3/64 in are over 1/8 in, three times 1/32 in are not.
    expect(joint.note).toContain('no more than 1/32 in; yours differ by 3/64 in');
    for (const made of [...demos, ...metric])
      for (const { limit, found, state } of gatesOf(made))
        if (state === 'fail' || state === 'advice') expect(found === limit && found !== '').toBe(false);
  });

  // By hand: 338 ticks are 338 / 8128 = 0.04158… in, 381 are 0.04687… in; 640 and 641 ticks 2 and 2.003125 mm.
  test('get as many decimals as tell them apart', () => {
    expect(sayApart(context('en'), { most: 338, yours: 381, other: 8128 })).toEqual({
      most: '0.042 in',
      yours: '0.047 in',
      other: '1 in',
    });
    expect(lengthsApart({ units: { system: 'mm', decimal: ',' } }, [640, 641])).toEqual(['2 mm', '2,003 mm']);
  });

  // By hand: a limit of 666 ticks is 0.0819 in, 5/64 in to the nearest; 640 ticks are 0.0787 in, 5/64 in too, and pass it.
  test('stay fractions where the result is seen, with the limit the stricter way where that takes it, else decimals', () => {
    const held = (found: number, limit: number, bound: 'most' | 'least') => {
      const pass = bound === 'most' ? found <= limit : found >= limit;
      const told = heldAgainst({ units: { system: 'inches', decimal: '.' } }, { found, limit, bound, pass });
      return [told.found, told.limit];
    };
    expect(held(640, 666, 'most')).toEqual(['5/64 in', '5/64 in']);
    expect(held(381, 338, 'most')).toEqual(['3/64 in', '1/32 in']);
    expect(held(640, 600, 'most')).toEqual(['5/64 in', '1/16 in']);
    expect(held(1010, 1020, 'least')).toEqual(['1/8 in', '9/64 in']);
    expect(held(640, 636, 'most')).toEqual(['0.079 in', '0.078 in']);
  });

  test('stay as they are where they are the same', () => {
    expect(sayApart(context('en'), { most: 381, yours: 381 })).toEqual({ most: '3/64 in', yours: '3/64 in' });
  });
});

describe('flatness', () => {
  const inInches = sheetsOf(
    'linden-entry',
    demoTexts['linden-entry']!.replace(
      'units: mm, saw step: 1 mm',
      'units: inches, saw step: 1/16 in',
    ).replace('\nbase:\n', '\nbase:\n  read on: base\n'),
  );

  test('under a straightedge of 2 m has one limit on both sheets in inches, and the straightedge its own name', () => {
    const [gate] = gatesOf(inInches).filter(({ what }) => what.startsWith('Flatness'));
    expect([gate!.limit, gate!.found, gate!.state]).toEqual(['5/64 in under 2 m', '5/64 in', 'pass']);
    expect(String(dataOf(inInches, 'base-sheet').asked)).toContain('5/64 in under 2 m');
  });

  // ANSI A108.01: 1/16 in under 1 ft where every side is under 15 in; 2 ft is the straightedge of longer tile.
  test('names on the base sheet the short straightedge of its rule, whichever the floor was read with', () => {
    const fernlea = demos.find(({ slug }) => slug === 'fernlea-boot-room')!;
    const { asked, spots } = dataOf(fernlea, 'base-sheet') as { asked: string; spots: { edge: string }[] };
    expect(spots.map(({ edge }) => edge)).toEqual(['Under 10 ft, limit 1/4 in', 'Under 2 ft, limit 1/16 in']);
    expect(asked).toMatch(/1\/4 in under a straightedge of 10 ft and 1\/16 in under 1 ft$/);
  });

  test.each(metric)('is told under one straightedge on both sheets in millimeters: $slug', (made) => {
    const { packet } = made;
    const longest = packet.limits.filter(({ rule }) => rule.startsWith('flatness.'));
    const asked = String(dataOf(made, 'base-sheet').asked);
    expect(longest.length).toBeGreaterThan(0);
    for (const { over } of longest) expect(asked).toContain(`${over! / 320} mm`);
    expect(JSON.stringify(made.sheets.map(({ data }) => data))).not.toContain('3048 mm');
  });
});

describe('a limit says where to look and with what', () => {
  const of = (slug: string, kind: string) => {
    const demo = demos.find((one) => one.slug === slug)!;
    return JSON.stringify(demo.sheets.filter(({ template }) => template === kind).map(({ data }) => data));
  };

  test('the short straightedge of the base sheet is told with its limit, and that of a longer tile', () => {
    expect(of('rowan-bath', 'base-sheet')).toContain(
      'Straightedge of 1 ft goes with 1/16 in for this tile; 2 ft with 1/16 in where sides are at least 15 in.',
    );
    expect(of('quarry-kitchen', 'job-sheet')).toContain('no more than 1/16 in under one of 1 ft');
  });

  test('nothing that a setter reads asks him to write in the job file, which the office has', () => {
    for (const lang of ['en', 'es', 'pt']) {
      const told = ['limit.bed.steeper', 'limit.bed.deeper', 'limit.house.asbestos.unnamed'];
      for (const code of told)
        expect(words.message(lang, code)).not.toMatch(
          /job file|archivo de la obra|arquivo da obra|nombre en la obra|nome na obra/,
        );
    }
    expect(words.message('en', 'limit.bed.steeper')).toContain('tell the office');
  });

  test('one ring is one ring', () => {
    expect(of('rowan-bath', 'job-sheet')).toContain('Add one spacer ring of 1/2 in.');
    expect(of('fernlea-boot-room', 'job-sheet')).toContain(
      'Stack spacer rings, 3/4 in together: one of 1/2 in and one of 1/4 in.',
    );
  });

  test('a floor with movement joints points to the sheet on which they run', () => {
    const file = join(import.meta.dirname, '../cases/patio-forty-feet-long/job.yaml');
    const demo = sheetsOf('patio', readFileSync(file, 'utf8'), ['job-sheet']);
    expect(JSON.stringify(demo.sheets.filter(({ template }) => template === 'job-sheet'))).toContain(
      'Where they run: Set-out',
    );
  });
});
