import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';

const CASES = join(import.meta.dirname, 'cases');

interface Expected {
  readonly code: string;
  readonly line: number;
  readonly column: number;
  readonly found?: string;
  readonly figures?: Readonly<Record<string, string | number>>;
}

describe('a job file with a mistake is refused with its line, its column and what was found', () => {
  test.each(readdirSync(CASES))('%s', (name) => {
    const text = readFileSync(join(CASES, name, 'job.yaml'), 'utf8');
    const { problems: expected } = JSON.parse(readFileSync(join(CASES, name, 'expected.json'), 'utf8'));
    const { job, problems } = readJob(text, `jobs/${name}/job.yaml`, name);

    expect(job).toBeUndefined();
    expect(problems.map(({ code, line, column }) => [code, line, column])).toEqual(
      expected.map(({ code, line, column }: Expected) => [code, line, column]),
    );
    expect(problems).toMatchObject(expected);
  });
});
