import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf } from './demos.ts';

type Demo = ReturnType<typeof sheetsOf>;
const dataOf = <T>({ sheets }: Demo, template: string) =>
  sheets.filter((sheet) => sheet.template === template).map(({ data }) => data as T);
const demoOf = (slug: string) => demos.find((one) => one.slug === slug)!;
/** The same job with another word in its file. */
const withText = (slug: string, from: string | RegExp, to: string) =>
  sheetsOf(slug, demoTexts[slug]!.replace(from, to));

describe('who lives there is told', () => {
  test('of the only way out of the house, where it leads over the floor, on the choice and at the door', () => {
    const back =
      'back: {in: C-D, from D: 30 in, clear: 28 in, wall: 4 1/2 in, left: plain, right: plain, beyond: wood}';
    const only = sheetsOf(
      'sedge-washroom',
      demoTexts['sedge-washroom']!.replace('only exit: no', 'only exit: yes').replace(
        '  obstacles:\n',
        `    ${back}\n  obstacles:\n`,
      ),
    );
    const other = demoOf('sedge-washroom');
    for (const sheet of ['choice-sheet', 'door-sign']) {
      expect(dataOf<{ noWayOut: string }>(only, sheet)[0]!.noWayOut).toMatch(
        /^The only way out of the house.* emergency too\.$/,
      );
      expect(dataOf<{ noWayOut: string }>(other, sheet)[0]!.noWayOut).toBe('');
    }
  });

  test('of it as a question where the floor has one doorway, so that nobody can cross it', () => {
    const asked = withText('sedge-washroom', 'only exit: no', 'only exit: yes');
    for (const sheet of ['choice-sheet', 'door-sign'])
      expect(dataOf<{ noWayOut: string }>(asked, sheet)[0]!.noWayOut).toMatch(
        /^One doorway: nobody crosses this floor.* emergency too\.$/,
      );
    expect(dataOf<{ onlyExit: string }>(asked, 'job-sheet')[0]!.onlyExit).toMatch(/one doorway: ask$/);
  });

  test('that sizes may change, while readings do not agree', () => {
    const held = dataOf<{ held: string }>(demoOf('rowan-bath'), 'choice-sheet')[0]!;
    expect(held.held).not.toBe('');
    expect(dataOf<{ held: string }>(demoOf('sedge-washroom'), 'choice-sheet')[0]!.held).toBe('');
  });

  test('that there is no toilet until the sealer has cured, where it could go back that day only, on every sheet that speaks of it', () => {
    const boot = demoOf('fernlea-boot-room');
    for (const sheet of ['choice-sheet', 'door-sign', 'care-sheet'])
      expect(dataOf<{ noToilet: string }>(boot, sheet)[0]!.noToilet).toMatch(
        /until Sat, Mar 20, 3\sPM at the earliest: arrange/,
      );
  });
});

describe('a room that no reading checks', () => {
  const kitchen = demoOf('quarry-kitchen');

  test('has a line on the job sheet, which names the diagonal to measure, and others have none', () => {
    const lines = (demo: Demo) =>
      dataOf<{ gates: readonly { note: string }[] }>(demo, 'job-sheet')[0]!.gates.filter(({ note }) =>
        note.startsWith('No check possible'),
      );
    expect(lines(kitchen).map(({ note }) => note)).toEqual([
      'No check possible: measure one diagonal (A-C).',
    ]);
    expect(lines(demoOf('sedge-washroom'))).toEqual([]);
  });

  test('has corners that are assumed square, not found so', () => {
    const told = (demo: Demo) => JSON.stringify(dataOf(demo, 'measuring'));
    expect(told(kitchen)).toContain('assumed square');
    expect(told(demoOf('sedge-washroom'))).not.toContain('assumed square');
  });
});

describe('a floor that is laid', () => {
  test('says so on every sheet but the owner’s, and a floor to be laid says it on none', () => {
    const laid = withText('quarry-kitchen', /status: \w+/, 'status: finished');
    const marked = ({ sheets }: Demo) => sheets.filter((one) => one.laid).map(({ name }) => name);
    const due = laid.sheets.filter((one) => one.for !== 'owner' && one.head).map(({ name }) => name);
    expect(due.length).toBeGreaterThan(5);
    expect(marked(laid)).toEqual(due);
    expect(marked(demoOf('quarry-kitchen'))).toEqual([]);
  });
});
