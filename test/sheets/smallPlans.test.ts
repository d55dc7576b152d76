import { describe, expect, test } from 'vitest';
import { textsIn } from '../drawing/readSvg.ts';
import { jobFile } from '../pages/support/variedJobs.ts';
import { demos, sheetsOf as sheetsOfJob } from './demos.ts';

const sheetsOf = (slug: string, template: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.filter((sheet) => sheet.template === template);
const planOf = (slug: string, template: string, at = 0) =>
  (sheetsOf(slug, template)[at]!.data as { readonly plan: string }).plan;
/** The words of a drawing that are names of pieces. */
const namesIn = (svg: string) => [...svg.matchAll(/>([KLMN]\d+-\d+)</g)].map(([, name]) => name!);

describe('the plan on a record', () => {
  test('has names led out where whole tiles hold theirs', () => {
    const { packet } = demos.find(({ slug }) => slug === 'rowan-bath')!;
    const cuts = packet.surfaces[0]!.pieces.filter(({ whole }) => !whole).map(({ id }) => id);
    const names = namesIn(planOf('rowan-bath', 'record'));
    expect(cuts.filter((id) => !names.includes(id)).length).toBeLessThan(cuts.length / 10);
  });

  test('is not covered with leaders where they do not: columns and rows are counted', () => {
    expect(namesIn(planOf('quarry-kitchen', 'record'))).toEqual([]);
    expect(planOf('quarry-kitchen', 'record')).toMatch(/>6</);
  });
});

describe('the plan of a zone', () => {
  test('keeps the place to kneel off its own pieces where the next zone is bare', () => {
    const { packet } = demos.find(({ slug }) => slug === 'fernlea-boot-room')!;
    const [zone] = packet.surfaces[0]!.zones;
    expect(namesIn(planOf('fernlea-boot-room', 'zone'))).toContain(zone!.last);
    expect(namesIn(planOf('fernlea-boot-room', 'zone')).length).toBe(zone!.pieces.length);
  });

  test('has the place to kneel outside the doorway at the end, where there is room beside the plan and none above it', () => {
    const texts = textsIn(planOf('almond-hall', 'zone'));
    const [kneel, doorway] = ['arrodíllese aquí', 'front: piso por venir'].map((words) =>
      texts.find((one) => one.words === words),
    );
    expect(kneel!.right).toBeLessThan(doorway!.left);
  });

  test('is drawn larger where the found spaces would halve it, and then they have the next page', () => {
    const [sheet] = sheetsOf('rowan-bath', 'zone');
    expect((sheet!.data as { apart: boolean }).apart).toBe(true);
    expect(Number(sheet!.scale!.split(':')[1])).toBeLessThanOrEqual(16);
  });
});

describe('the plan of a long hall in zones', () => {
  const hall = (walls: readonly [string, string]) => {
    const { sheets } = sheetsOfJob(
      'hall',
      jobFile({
        walls,
        tile: ['200 mm', '200 mm'],
        joint: '3 mm',
        pattern: 'straight',
        paper: 'a4',
        units: 'mm',
        crew: 'en',
        owner: 'en',
        title: 'Hall',
      }),
    );
    const zone = sheets.find(({ template }) => template === 'zone')!;
    const { plan, closer } = zone.data as { readonly plan: string; readonly closer: number };
    const corner = (letter: string) => textsIn(plan).find(({ words }) => words === letter)!;
    const [wide, high] = [/ width="([\d.]+)mm"/, / height="([\d.]+)mm"/].map((part) =>
      Number(part.exec(plan)![1]),
    );
    return {
      ratio: Number(zone.scale!.split(':')[1]),
      landscape: zone.landscape,
      closer,
      corner,
      wide: wide!,
      high: high!,
    };
  };

  test('lies on its page, the first wall at the foot', () => {
    const { landscape, ratio, closer, corner, wide, high } = hall(['4600 mm', '900 mm']);
    expect({ landscape, ratio, closer }).toEqual({ landscape: true, ratio: 25, closer: 2 });
    expect(wide).toBeGreaterThan(2 * high);
    expect(corner('A').right).toBeLessThan(corner('B').left);
    expect(corner('A').top).toBeGreaterThan(corner('D').bottom);
  });

  test('lies turned by a quarter where the first wall is the short one', () => {
    const { landscape, ratio, closer, corner, wide, high } = hall(['900 mm', '4600 mm']);
    expect({ landscape, ratio, closer }).toEqual({ landscape: true, ratio: 25, closer: 2 });
    expect(wide).toBeGreaterThan(2 * high);
    expect(corner('A').left).toBeGreaterThan(corner('D').right);
    expect(corner('B').bottom).toBeLessThan(corner('A').top);
  });

  test('stands where that makes it no larger', () => {
    expect(hall(['1900 mm', '2300 mm']).landscape).toBeFalsy();
  });
});
