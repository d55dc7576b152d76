import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

/** Ticks of a size as print tells it: `6 5/8 in`, `88 mm`. */
function ticksOf(size: string): number {
  const [, whole = '0', over = '0', under = '1', unit] =
    /^(?:([\d.]+)(?: |$))?(?:(\d+)\/(\d+) )?(in|mm)$/.exec(size)!;
  return (Number(whole) + Number(over) / Number(under)) * (unit === 'in' ? 8128 : 320);
}

/** All texts of a sheet's data, its drawings among them. */
function textsOf(data: unknown): string[] {
  if (typeof data === 'string') return [data];
  return data !== null && typeof data === 'object' ? Object.values(data).flatMap(textsOf) : [];
}

const FIGURE = String.raw`(?:\d+(?:\.\d+)? )?(?:\d+\/\d+ )?`;
/** A size, or two of them, with the share of each. */
const TOLD = new RegExp(`(?:(${FIGURE})(?:to|a) )?((?:${FIGURE})(in|mm))(?: ·|,) (?:(\\d+)–)?(\\d+) %`, 'g');

/** Each size with its share; of two that round to one share, that share with both. */
const sharesIn = (words: string) =>
  [...words.matchAll(TOLD)].flatMap(([, from, size, unit, least, most]) => [
    ...(from ? [{ size: `${from}${unit}`, percent: Number(least ?? most) }] : []),
    { size: size!, percent: Number(most) },
  ]);

const extent = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

describe.each(demos)('a size told with its share of a tile in $slug', ({ packet, sheets }) => {
  const sides = packet.surfaces.flatMap(({ pattern }) =>
    pattern.tiles.flatMap(({ ring }) => [extent(ring.map(([x]) => x)), extent(ring.map(([, y]) => y))]),
  );
  // The tally tells joints with their share of the floor.
  const told = sheets.flatMap(({ name, template, data }) =>
    (template === 'material-tally' ? [] : textsOf(data)).flatMap((words) =>
      sharesIn(words).map((one) => ({ name, ...one })),
    ),
  );

  test('whoever divides the size that is printed by a side of the tile finds the share that is printed', () => {
    expect(told.length).toBeGreaterThan(0);
    const wrong = told.filter(
      ({ size, percent }) => !sides.some((side) => Math.round((100 * ticksOf(size)) / side) === percent),
    );
    expect(wrong).toEqual([]);
  });

  test('one size has one share of one side, on whichever sheet it is told', () => {
    const shares = new Map<string, Set<number>>();
    for (const { size, percent } of told) shares.set(size, (shares.get(size) ?? new Set()).add(percent));
    expect([...shares].filter(([, percents]) => percents.size > new Set(sides).size)).toEqual([]);
  });
});

describe.each(demos)('the cuts at a wall out of line in $slug', ({ packet, sheets }) => {
  test('are told in steps of the saw, as the saw list tells them', () => {
    const { surfaces } = sheets.find(({ template }) => template === 'alternatives')!.data as {
      surfaces: readonly { taper?: { walls: readonly { cut: string }[] } }[];
    };
    const told = surfaces.flatMap(({ taper }) => (taper?.walls ?? []).flatMap(({ cut }) => cut.split(' – ')));
    const sizes = told.filter((size) => size !== '').map(ticksOf);
    expect(sizes.filter((size) => size % packet.rounding.step !== 0)).toEqual([]);
  });
});

describe.each(demos)('the starts compared of $slug', ({ packet, sheets }) => {
  // Arithmetic: at 45° a row ends in a triangle, as long as the line through it happens to be.
  test('tell the cuts at the two ends but where the pattern lies aslant to the walls', () => {
    const { surfaces } = sheets.find(({ template }) => template === 'alternatives')!.data as {
      surfaces: readonly { figures: readonly string[] }[];
    };
    const aslant = packet.spec.surfaces.map(({ pattern }) => pattern.turnedDeg % 90 !== 0);
    expect(surfaces.map(({ figures }) => figures.includes('along') || figures.includes('across'))).toEqual(
      aslant.map((one) => !one),
    );
  });
});

describe('the cut told at the end of an axis of a pattern that lies in no courses', () => {
  const { packet } = demos.find(({ slug }) => slug === 'sedge-washroom')!;
  const { pieces, cuts, field, start } = packet.surfaces[0]!;
  const { step } = packet.rounding;
  const corners = field.flatMap(({ outer }) => outer);

  test.each([
    ['along', 0],
    ['across', 1],
  ] as const)('%s is one that the saw list tells of a piece there', (way, axis) => {
    for (const [end, told] of start.chosen.ends[way].entries()) {
      const far = (ring: readonly (readonly [number, number])[]) =>
        end === 0 ? -Math.min(...ring.map((p) => p[axis])) : Math.max(...ring.map((p) => p[axis]));
      // A wall that leans ends the field within half an inch of where it ends it at the most.
      const there = pieces.filter(({ whole, shape }) => !whole && far(shape.outer) > far(corners) - 4064);
      const own = cuts.filter((cut) => there.some((piece) => piece.cut === cut.number));
      expect(own.flatMap(({ sizes }) => sizes.map(({ saw }) => saw))).toContain(told - (told % step));
    }
  });
});

describe('half a tile', () => {
  // Arithmetic: 11 7/8 and 5 7/8 less 3/16, halved, are 5 27/32 and 2 27/32: cuts of that size are printed 1/32 less, in steps of 1/16.
  test('is told once on the plan where a piece in sight is under half of its tile', () => {
    const { sheets } = demos.find(({ slug }) => slug === 'quarry-kitchen')!;
    const plan = sheets
      .filter(({ template }) => template === 'layout-plan')
      .flatMap(({ data }) => textsOf(data));
    expect(plan.filter((text) => text.includes('half of it less half a joint'))).toEqual([
      'Half a tile here is half of it less half a joint, as it is sawn: 5 13/16 in · 2 13/16 in.',
    ]);
  });

  test('is not told where no piece is so small', () => {
    for (const { packet, sheets } of demos) {
      if (packet.surfaces.some(({ start }) => start.chosen.smallestShare < 0.5)) continue;
      const plan = sheets
        .filter(({ template }) => template === 'layout-plan')
        .flatMap(({ data }) => textsOf(data));
      expect(plan.filter((text) => /half a joint|media junta/.test(text))).toEqual([]);
    }
  });
});

describe.each(demos)('the sawn length of a start in $slug', ({ sheets }) => {
  test('is told in whole inches or tenths of a metre', () => {
    const { surfaces } = sheets.find(({ template }) => template === 'alternatives')!.data as {
      surfaces: readonly { rows: readonly { cutLength: string }[] }[];
    };
    for (const { cutLength } of surfaces.flatMap(({ rows }) => rows))
      expect(cutLength).toMatch(/^(?:\d+ ft(?: \d+ in)?|\d+ in|\d+(?:[.,]\d)? m)$/);
  });
});

describe.each(demos)('the narrowest cut of a start in $slug', ({ packet, sheets }) => {
  const { surfaces } = sheets.find(({ template }) => template === 'alternatives')!.data as {
    surfaces: readonly {
      proof?: string;
      rows: readonly { smallest: string; reasons: readonly string[] }[];
    }[];
  };

  test('has its share told in its row alone: the proof tells the bound and no other share', () => {
    for (const [i, { proof = '' }] of surfaces.entries()) {
      const { bound } = packet.surfaces[i]!.start;
      const shares = [...proof.matchAll(/(\d+) %/g)].map(([, share]) => Number(share));
      expect(shares).toEqual(bound ? [Math.ceil(bound.narrowest * 100)] : []);
    }
  });

  test('has in the reasons the size of the rows, in steps of the saw', () => {
    const sizes = surfaces.flatMap(({ rows }) =>
      rows.flatMap(({ reasons }) =>
        reasons.flatMap((reason) => {
          const [, size, before = size] = /smallest piece is ([^,]+)(?:, not ([^,]+))?$/.exec(reason) ?? [];
          return size ? [size, before!] : [];
        }),
      ),
    );
    expect(sizes.filter((size) => ticksOf(size) % packet.spec.print.step !== 0)).toEqual([]);
  });
});
