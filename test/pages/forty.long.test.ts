import { fortyJobs } from './support/fortyJobs.ts';
import { printedWell } from './support/printedWell.ts';

/** `ROUND=3/8` runs the third of eight rounds alone. */
const [round, rounds] = (process.env.ROUND ?? '').split('/').map(Number);
const jobs = Object.entries(fortyJobs());
const size = 5;

for (let from = 0; from < jobs.length; from += size) {
  const wanted = !round || !rounds || Math.floor((from / jobs.length) * rounds) === round - 1;
  const some = jobs.slice(from, from + size);
  if (wanted) printedWell(`jobs ${from + 1} to ${from + some.length} of forty`, Object.fromEntries(some));
}
