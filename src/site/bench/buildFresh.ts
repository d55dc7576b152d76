/** `node buildFresh.ts <program> <folder> <browser>`: builds the jobs in the folder's `jobs`, then prints its peak memory in MB. */
import { join } from 'node:path';
import { beginBuild } from '../beginBuild.ts';
import { placesUnder } from '../places.ts';

const [home = '', folder = '', browser = ''] = process.argv.slice(2);
const places = { ...placesUnder(home, folder), home, layouts: join(home, 'layouts') };
const { problems } = await beginBuild(places, { names: [], browser, progress: () => undefined });
if (problems.length > 0) throw new Error(problems.join('\n'));
// Node gives kilobytes, whatever the system counts in.
process.stdout.write(String(process.resourceUsage().maxRSS / 1000));
