import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';

const text = readFileSync(join(import.meta.dirname, '../../src/site/commands/new-job.yaml'), 'utf8');

/** The file with the lines that are put out of use by a comment sign put in use. */
function uncommented(): string {
  return text.replace(/^( *)# ((?: {2})?[a-z ]+: ?(?:\{.*\})?)$/gm, '$1$2');
}

describe('the file for a new job', () => {
  test('is a job file without a problem', () => {
    expect(readJob(text, 'jobs/new/job.yaml').problems).toEqual([]);
  });

  test('still is one with its examples in use', () => {
    const all = uncommented();
    expect(all).toMatch(/^ {2}doorways:$/m);
    expect(all).toMatch(/^ {4}flange: /m);
    expect(readJob(all, 'jobs/new/job.yaml').problems).toEqual([]);
  });
});
