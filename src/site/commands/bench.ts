import { benchSteps } from '../bench.ts';
import { timeSteps } from '../timeSteps.ts';
import type { CommandInput } from './CommandInput.ts';

/** Times the parts of a build on this machine. */
export async function run(input: CommandInput): Promise<number> {
  for await (const line of timeSteps(await benchSteps(input))) process.stdout.write(`${line}\n`);
  return 0;
}
