import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf, words } from './demos.ts';

const say = words.say('en');

interface JobData {
  readonly five: { readonly undercut?: unknown };
  readonly gates: readonly { readonly what: string }[];
}

const jobSheetOf = ({ sheets }: Pick<(typeof demos)[number], 'sheets'>) =>
  sheets.find(({ template }) => template === 'job-sheet')!.data as JobData;

describe('an undercut', () => {
  test.each(demos)('of $slug is told where the job file has one, and nowhere else', (demo) => {
    const has = /undercut/.test(demoTexts[demo.slug]!.replace(/#.*/g, ''));
    const { five, gates } = jobSheetOf(demo);
    const languages = [say('gate.undercut'), words.say('es')('gate.undercut')];
    expect(five.undercut !== undefined).toBe(has);
    expect(gates.some(({ what }) => languages.includes(what))).toBe(has);
    const { data } = demo.sheets.find(({ template }) => template === 'heights')!;
    const { undercut, drawing } = data as { undercut: string; drawing: string };
    expect(undercut !== '').toBe(has);
    const titles = words.languages.map((lang) => words.say(lang)('drawing.section.block'));
    expect(titles.some((title) => drawing.includes(title))).toBe(has);
  });

  test('is in some demo job, and in some it is not', () => {
    const told = demos.map((demo) => jobSheetOf(demo).five.undercut !== undefined);
    expect(new Set(told)).toEqual(new Set([true, false]));
  });
});

const pathsOf = (slug: string, change: (text: string) => string = (text) => text) =>
  sheetsOf(slug, change(demoTexts[slug]!), ['assumed']).packet.defaults.map(({ path }) => path);

describe('what is told as assumed', () => {
  test('has no figure of a sealer where nothing is sealed', () => {
    expect(pathsOf('linden-entry').filter((path) => path.startsWith('products.sealer'))).toEqual([]);
    const sealed = pathsOf('linden-entry', (text) => text.replace('sealer: {kind: none}', ''));
    expect(sealed.filter((path) => path.startsWith('products.sealer'))).toHaveLength(4);
  });

  test('has right angles only where readings do not fix the shape', () => {
    const angles = (paths: readonly string[]) => paths.filter((path) => path.includes('.angles.'));
    expect(angles(pathsOf('rowan-bath'))).toEqual([]);
    expect(angles(pathsOf('quarry-kitchen'))).toEqual(['floor.angles.A, B, C, D, F']);
    const unread = (text: string) => text.replace(/^ {2}(diagonals|corner checks):.*\n/gm, '');
    expect(angles(pathsOf('fernlea-boot-room', unread))).toEqual(['floor.angles.A, B, C, D']);
  });
});
