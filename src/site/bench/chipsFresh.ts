/**
 * `node chipsFresh.ts <program>`: lays a floor of 20,000 loose chips and draws its plan, then prints as JSON the time in ms of pieces, start and
 * tile plan on the second of two runs, the peak memory in MB and the size of the plan in kB.
 */
import { join } from 'node:path';
import { planSvg } from '../../exchange/planSvg.ts';
import { core } from '../Core.ts';
import { readWords } from '../words.ts';
import { squareFloor } from './squareFloor.ts';

const [home = ''] = process.argv.slice(2);
const say = readWords(join(home, 'layouts', 'words')).say('en');
// With their joints 20,000 hexagons of 1 in are 160 in by 138 in.
const { job } = core.readJob(
  squareFloor({ tile: 1, wide: 160, deep: 138, turned: 0, hexagons: true }),
  'chips',
);
if (!job) throw new Error('the floor of chips is no job');

function laid(read: typeof job & object) {
  const started = performance.now();
  const made = core.makePacket(read);
  if ('problems' in made) throw new Error(made.problems.map(({ code }) => code).join(', '));
  return { packet: made.packet, ms: performance.now() - started };
}

laid(job);
const { packet, ms } = laid(job);
const { system, step } = { system: 'inches', step: packet.spec.print.step } as const;
const planKb = packet.surfaces.map((surface) => planSvg(surface, system, step, say).length / 1000);
// Node gives kilobytes, whatever the system counts in.
const peakMb = process.resourceUsage().maxRSS / 1000;
process.stdout.write(JSON.stringify({ ms, peakMb, planKb: Math.max(...planKb) }));
