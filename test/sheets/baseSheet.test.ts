import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf } from './demos.ts';

interface Base {
  readonly asked: string;
  readonly found: readonly { readonly text: string; readonly answers?: readonly string[] }[];
  readonly checks: readonly { readonly what: string; readonly second: string }[];
}

const baseOf = (slug: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.find(({ template }) => template === 'base-sheet')!
    .data as Base;

describe('the base sheet', () => {
  test('a job in millimetres has the round limits that ANSI A108.01 prints beside its inches', () => {
    expect(baseOf('almond-hall').asked).toContain('6 mm');
    expect(baseOf('almond-hall').asked).toContain('3000 mm');
  });

  test('a job in inches has those of ANSI A108.01 in inches', () => {
    expect(baseOf('rowan-bath').asked).toContain('1/4 in under a straightedge of 10 ft');
  });

  test('of a straightedge longer than the floor the longest that fits does', () => {
    const room = demos.find(({ slug }) => slug === 'sedge-washroom')!.packet.surfaces[0]!;
    const [long, wide] = [0, 1].map((axis) => {
      const all = room.outline.map((point) => point[axis]!);
      return (Math.max(...all) - Math.min(...all)) / (12 * 8128);
    });
    // A room of 86 by 66 in is under 10 ft even from corner to corner.
    expect(Math.hypot(long!, wide!)).toBeLessThan(10);
    expect(baseOf('sedge-washroom').asked).toContain('10 ft, or the longest that fits here');
    expect(baseOf('almond-hall').asked).not.toContain('that fits here');
  });

  test.each([
    ['rowan-bath', ['Película en la base', 'Humedad']],
    ['almond-hall', ['Film on the base', 'Moisture']],
    ['quarry-kitchen', ['', '']],
  ])('%s speaks the second language of its crew, if there is one', (slug, words) => {
    expect(baseOf(slug).checks.map(({ second }) => second)).toEqual(words);
  });

  test('what moves where no tile joint lies over it has its answers to tick, and is not told to be done already', () => {
    const [row] = baseOf('quarry-kitchen').found;
    expect(row!.answers).toHaveLength(3);
    expect(row!.text).not.toContain('Carry it up');
  });

  test('what has nothing to decide has none', () => {
    const open = baseOf('fernlea-boot-room').found.filter(({ answers }) => answers);
    expect(open).toEqual([]);
  });
});

describe('what was read under a straightedge', () => {
  interface Told {
    readonly spots: readonly { edge: string; text: string; state: string; failed: boolean }[];
    readonly checkCount: string;
  }
  const toldOf = (slug: string, change = (text: string) => text) =>
    sheetsOf(slug, change(demoTexts[slug]!), ['base-sheet']).sheets[0]!.data as Told;

  const onBare = (text: string) => text.replace('\nbase:\n', '\nbase:\n  read on: base\n');

  test.each([
    ['rowan-bath', '1/8 in', 'the tub', '1/4 in under 10 ft', 'PASSES', 'sheet vinyl'],
    ['sedge-washroom', '1/8 in', 'the door', '1/4 in under 10 ft', 'PASSES', 'sheet vinyl'],
    ['linden-entry', '2 mm', 'the doorway', '2 mm under 2000 mm', 'PASSES', 'old tile'],
  ])(
    'of %s stands on the base sheet with its result, and room for the rest; open where it was read on what comes up',
    (slug, gap, where, limit, state, old) => {
      const bare = toldOf(slug, onBare);
      const again = `Read on ${old}, which comes up: read again on the bare base.`;
      expect(toldOf(slug).spots).toEqual([
        {
          edge: `Limit ${limit}`,
          text: `Found ${gap} at ${where}. ${again}`,
          state: '',
          failed: false,
        },
      ]);
      const { spots, checkCount } = bare;
      expect(spots).toEqual([
        { edge: `Limit ${limit}`, text: `Found ${gap} at ${where}.`, state, failed: false },
      ]);
      expect(checkCount).toContain('1 of them told above');
      expect(checkCount).toMatch(/_{8} found _{8}$/);
    },
  );

  test('is what the job sheet says was found', () => {
    for (const { sheets } of demos) {
      const dataOf = (name: string) => sheets.find(({ template }) => template === name)!.data;
      const { gates } = dataOf('job-sheet') as { gates: { what: string; found: string; limit: string }[] };
      const { spots } = dataOf('base-sheet') as Told;
      const flat = gates.filter(({ what, found }) => /^(?:Flatness|Planeidad)/.test(what) && found !== '');
      for (const { found } of flat)
        expect(spots.some(({ text }) => new RegExp(`(?:^|\\s)${found}(?:\\s|\\.)`).test(text))).toBe(true);
    }
  });

  test('and does not pass tells what to do', () => {
    const [spot] = toldOf('rowan-bath', (text) =>
      text.replace('1/8 in under 10 ft', '3/8 in under 10 ft'),
    ).spots;
    expect(spot).toMatchObject({ state: 'FAILS LIMIT', failed: true });
    expect(spot!.text).toMatch(/^Found 3\/8 in at the tub\. Patch or grind/);
  });
});

describe('what moves in the base, on the tally', () => {
  const linesOf = (slug: string) =>
    demos
      .find((demo) => demo.slug === slug)!
      .sheets.filter(({ template }) => template === 'material-tally')
      .flatMap(({ data }) => (data as { materials: readonly { sum: readonly string[] }[] }).materials)
      .flatMap(({ sum }) => sum);

  // The wood meets over the old wall 8 ft from A-B, where the kitchen is 7 ft 6 3/4 in wide, less a gap of 1/4 in at each end.
  test('is not counted while the base sheet asks, but told with what it would add', () => {
    const told = linesOf('quarry-kitchen').filter((line) => line.startsWith('Not counted: 7.5 ft'));
    expect(new Set(told).size).toBe(2);
  });

  test('is not told where nothing moves', () => {
    expect(linesOf('rowan-bath').filter((line) => line.startsWith('Not counted'))).toEqual([]);
  });
});

describe('what covers the gap at the walls', () => {
  interface Back {
    readonly goes: readonly { readonly what: string; readonly back: string; readonly sealed: string }[];
  }

  test.each(['rowan-bath', 'quarry-kitchen', 'fernlea-boot-room', 'sedge-washroom', 'linden-entry'])(
    'goes back at %s once the sealant that is begun at that hour has skinned, and nothing else waits for it',
    (slug) => {
      const { goes } = baseOf(slug) as unknown as Back;
      const skinned = goes.filter(({ sealed }) => sealed === 'sealant skinned, by its sheet');
      expect(skinned.map(({ what }) => what)).toEqual(['baseboard']);
    },
  );
});
