import { describe, expect, test } from 'vitest';
import { addCorner } from '../../src/form/addCorner.ts';
import { treeOf } from '../../src/form/fieldValues.ts';
import { removeCorner } from '../../src/form/removeCorner.ts';
import { roomNames } from '../../src/form/roomNames.ts';
import { startShapes, startText } from '../../src/form/startText.ts';
import { writeField } from '../../src/form/writeField.ts';
import { readJob } from '../../src/job/readJob.ts';
import { demo, fieldAt, fieldsOf, viewOf } from './support.ts';

const jobOf = (text: string) => readJob(text, 'job.yaml', 'job').job;

const demos = ['fernlea-boot-room', 'quarry-kitchen', 'almond-hall'];

describe.each(demos)('the form of %s', (slug) => {
  const text = demo(slug);
  const answered = fieldsOf(text).filter(({ values }) => values.length > 0);

  test('shows what its file says', () => {
    expect(answered.length).toBeGreaterThan(25);
    expect(fieldsOf(text).filter(({ byHand }) => byHand !== undefined)).toEqual([]);
  });

  test('gives the same job when an answer is written again as it is', () => {
    const job = jobOf(text);
    for (const field of answered) expect(jobOf(writeField(text, field, field.values)), field.id).toEqual(job);
  });

  test('gives the same job when an answer is taken back and written again', () => {
    const job = jobOf(text);
    const optional = answered.filter(
      ({ asked, from }) => asked.path.at(-1) !== '<name>' && from === undefined,
    );
    for (const field of optional) {
      const without = writeField(text, field, ['']);
      expect(without, field.id).not.toBe(text);
      const again = jobOf(writeField(without, field, field.values));
      expect({ ...again, defaults: [] }, field.id).toEqual({ ...job, defaults: [] });
    }
  });
});

describe('an answer', () => {
  const text = demo('fernlea-boot-room');

  test.each([
    ['base/heights/flange/height', ['3/8 in'], 'flange: 3/8 in above sheet vinyl'],
    ['base/heights/flange/needs', ['1/2 in'], 'flange: {height: 1/4 in, above: sheet vinyl, needs: 1/2 in}'],
    ['floor/walls/B-C/read', ['6 ft', '', '6 ft 1/8 in'], 'B-C: {read: [6 ft, 6 ft 1/8 in]}'],
    ['floor/doorways/hall/right', ['post', '1 in x 2 in'], 'right: post 1 in x 2 in'],
    ['contacts/phone', [' 0417 '], 'phone: 0417'],
  ])('at %s is written as one would by hand', (path, values, line) => {
    expect(writeField(text, fieldAt(text, path), values)).toContain(line);
  });

  test('about a distance may be measured from another wall', () => {
    const field = fieldAt(text, 'floor/obstacles/pipe/from C-D');
    expect(writeField(text, field, ['4 in'], 'A-B')).toContain(
      '{circle: 1 1/4 in, from A-B: 4 in, from D-A: 30 in, meets: pipe}',
    );
  });

  test('that is taken back takes an empty list with it, but never a thing with a name', () => {
    const kitchen = demo('quarry-kitchen');
    expect(writeField(kitchen, fieldAt(kitchen, 'floor/angles/E'), [''])).not.toContain('angles');
    expect(writeField(text, fieldAt(text, 'floor/walls/D-A/read'), [''])).toContain('D-A: {}');
  });

  test('to a wall that is but its reading gives it keys', () => {
    const short = startText('rectangle', 'mm', '2027-03-01').replace('A-B:', 'A-B: 3 m');
    expect(writeField(short, fieldAt(short, 'floor/walls/A-B/touch'), ['no'])).toContain(
      'A-B: {read: 3 m, touch: no}',
    );
  });
});

describe('corners', () => {
  const start = startText('rectangle', 'mm', '2027-03-01').replace('B-C:', 'B-C: 3 m');
  const walls = (text: string) => roomNames(treeOf(text), ['floor']).walls;

  test('put into a wall go with its end, its reading stays with its beginning', () => {
    const more = addCorner(start, ['floor'], 'B-C');
    expect(walls(more)).toEqual(['A-B', 'B-E', 'E-C', 'C-D', 'D-A']);
    expect(more).toContain('B-E: 3 m');
  });

  test('taken out leave the walls as they were', () => {
    expect(removeCorner(addCorner(start, ['floor'], 'B-C'), ['floor'], 'B-E')).toBe(start);
  });

  test('are never fewer than three', () => {
    const three = removeCorner(start, ['floor'], 'A-B');
    expect(walls(three)).toHaveLength(3);
    expect(removeCorner(three, ['floor'], walls(three)[0]!)).toBe(three);
  });
});

describe('problems stand at the question they belong to', () => {
  const misread = demo('fernlea-boot-room')
    .replace('6 ft 4 3/8', '7 ft 4 3/8')
    .replace('circle: 7 in', 'circle: 7');

  test.each(startShapes)('a room begun as %s lacks only what it asks for', (shape) => {
    const text = startText(shape, 'inches', '2027-03-01');
    expect(viewOf(text).elsewhere).toEqual([]);
    const lacking = fieldsOf(text).filter(({ problems }) => problems.length > 0);
    expect(lacking.length).toBe(roomNames(treeOf(text), ['floor']).walls.length + 3);
    expect(lacking.every(({ asked }) => asked.required)).toBe(true);
  });

  test('in the file, of a value', () => {
    expect(fieldAt(misread, 'floor/obstacles/flange/circle').problems.map(({ code }) => code)).toEqual([
      'bareNumber',
    ]);
  });

  test('and what the form does not ask is told apart', () => {
    const { elsewhere } = viewOf(`${demo('almond-hall')}\nmystery: 3\n`);
    expect(elsewhere.map(({ code, path, line }) => [code, path, line !== undefined])).toEqual([
      ['unknownKey', ['mystery'], true],
    ]);
  });
});
