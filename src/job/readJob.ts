import { buildJob } from './buildJob.ts';
import type { Job } from './Job.ts';
import { jobSchema } from './jobSchema.ts';
import { jsonSchema } from './jsonSchema.ts';
import type { Problem } from './Problem.ts';
import { readShape, withoutEchoes } from './shape/readShape.ts';
import type { Trouble } from './shape/Trouble.ts';
import { systemOf } from './systemOf.ts';
import { placeTextTrouble, placeTrouble } from './yaml/placeTrouble.ts';
import { readYaml } from './yaml/readYaml.ts';

/** A job, or everything that is wrong with its file. */
export interface JobReading {
  readonly job?: Job;
  readonly problems: readonly Problem[];
}

function isEmpty(value: unknown): boolean {
  return value === null || value === undefined || value === '';
}

function readValues(
  value: unknown,
  slug: string,
): { readonly job?: Job; readonly troubles: readonly Trouble[] } {
  if (isEmpty(value)) return { troubles: [{ code: 'emptyFile', path: [], figures: {} }] };
  const { value: given, structural, unread } = readShape(value, jobSchema, jsonSchema());
  if (!given) return { troubles: withoutEchoes(structural, unread) };
  const built = buildJob(given, slug, systemOf(value));
  return { job: built.job, troubles: withoutEchoes(structural, [...unread, ...built.troubles]) };
}

function byPlace(a: Problem, b: Problem): number {
  return (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0);
}

/** The folder that a job file lies in: `jobs/boot-room/job.yaml` is of `boot-room`. */
function folderOf(file: string): string {
  return file.split(/[\\/]/).at(-2) ?? 'job';
}

/**
 * Reads a job file. Never throws: all problems are told together, each with its line and column, what was found, and the
 * figures for the sentences that say what was expected and the way out. There is a job only when there is no problem.
 *
 * @example
 * readJob('', 'jobs/a/job.yaml', 'a').problems.map(({ code, line }) => [code, line]) //=> [['emptyFile', 1]]
 */
export function readJob(text: string, file: string, slug: string = folderOf(file)): JobReading {
  const yaml = readYaml(text);
  const ofText = yaml.troubles.map((trouble) => placeTextTrouble(trouble, yaml, file));
  const untrusted = yaml.troubles.some(({ code }) => code !== 'duplicateKey');
  if (untrusted) return { problems: ofText };
  const { job, troubles } = readValues(yaml.value, slug);
  const placed = troubles.map((trouble) => placeTrouble(trouble, yaml, text, file));
  const problems = [...ofText, ...placed].sort(byPlace);
  return job && problems.length === 0 ? { job, problems } : { problems };
}
