import { describe, expect, test } from 'vitest';
import { csvField } from '../../src/exchange/cutsCsv.ts';
import { benchLine } from '../../src/site/bench/benchLine.ts';
import { timed } from '../../src/site/bench/timed.ts';
import { cssString } from '../../src/site/cssString.ts';
import { fixPdfDates } from '../../src/site/fixPdfDates.ts';
import { isSlug } from '../../src/site/readFolders.ts';

describe('a CSS string', () => {
  test.each(['"', '\\', '</style>', '\n', "'", '*/', '🧱'])('never lets %j out', (text) => {
    expect(cssString(text)).toMatch(/^"[A-Za-z0-9 \\]*"$/);
  });

  test('keeps a letter that follows apart from the code point', () => {
    expect(cssString('&b')).toBe('"\\26 b"');
  });
});

describe('a field of a table, as RFC 4180 writes it', () => {
  test.each([
    ['plain', 'plain'],
    ['a,b', '"a,b"'],
    ['say "x"', '"say ""x"""'],
    ['two\nlines', '"two\nlines"'],
    ['=SUM(A1)', "'=SUM(A1)"],
  ])('%j is %j', (text, field) => {
    expect(csvField(text)).toBe(field);
  });
});

test('dates in a PDF become fixed ones of the same length', () => {
  const pdf = Buffer.from(
    "<</CreationDate (D:20261125010203+00'00')\n/ModDate (D:20261125010204+00'00')>>\xff",
    'latin1',
  );
  const fixed = Buffer.from(fixPdfDates(pdf));
  expect(fixed).toHaveLength(pdf.length);
  expect(fixed.toString('latin1').match(/D:\d{14}/g)).toEqual(['D:20000101000000', 'D:20000101000000']);
  expect(fixed.at(-1)).toBe(0xff);
});

test.each([
  ['boot-room', true],
  ['hall2', true],
  ['Boot', false],
  ['a b', false],
  ['-a', false],
  ['..', false],
  ['assets', false],
])('%s can name a job: %s', (name, can) => {
  expect(isSlug(name)).toBe(can);
});

describe('a bench', () => {
  test('does the work often enough first, then as often as it counts', async () => {
    let runs = 0;
    expect(await timed(() => runs++, { warmUps: 2, times: 3 })).toHaveLength(3);
    expect(runs).toBe(5);
  });

  test.each([
    [undefined, 'count 7 ms 3'],
    [7, 'count 7 ms 7 ms 3'],
    [6, 'count 7 ms 6 ms 3 over the target'],
  ])('gives the median beside the target %s', (target, line) => {
    expect(benchLine({ name: 'count', unit: 'ms', target }, [7, 3, 9]).replace(/ +/g, ' ')).toBe(line);
  });
});
