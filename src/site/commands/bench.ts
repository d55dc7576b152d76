import { benchHead, benchLine } from '../bench/benchLine.ts';
import { buildSteps } from '../bench/buildSteps.ts';
import { calculationSteps } from '../bench/calculationSteps.ts';
import { chipSteps } from '../bench/chipSteps.ts';
import { comparedSteps } from '../bench/comparedSteps.ts';
import { familySteps } from '../bench/familySteps.ts';
import { startSteps } from '../bench/startSteps.ts';
import { tileSteps } from '../bench/tileSteps.ts';
import { unchangedSteps } from '../bench/unchangedSteps.ts';
import { placesUnder } from '../places.ts';
import type { CommandInput } from './CommandInput.ts';

/** Measures the parts of a build on this machine and prints them as a table. Judges nothing: a slow machine is no fault. */
export async function run({ home, browser }: CommandInput): Promise<number> {
  const places = placesUnder(home);
  const withBrowser = browser ? [...buildSteps(home, browser), ...comparedSteps(places, browser)] : [];
  process.stdout.write(`${benchHead}\n`);
  const steps = [
    ...calculationSteps(places.jobs),
    ...chipSteps(home),
    ...startSteps(),
    ...tileSteps(),
    ...familySteps(),
    ...unchangedSteps(home),
    ...withBrowser,
  ];
  for (const step of steps) {
    process.stdout.write(`${benchLine(step, await step.measure())}\n`);
  }
  if (!browser) process.stderr.write('No browser was found, so nothing is printed here. See npm start.\n');
  return 0;
}
