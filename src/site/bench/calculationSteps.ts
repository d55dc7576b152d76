import type { Job } from '../../job/Job.ts';
import { makeAdjustment } from '../../room/makeAdjustment.ts';
import { core } from '../Core.ts';
import { readFolders } from '../readFolders.ts';
import { roundFloor } from './roundFloor.ts';
import type { Step } from './Step.ts';
import { squareFloor } from './squareFloor.ts';
import { timed } from './timed.ts';

function readOrThrow(text: string, file: string): Job {
  const { job, problems } = core.readJob(text, file);
  if (!job) throw new Error(`${file}: ${problems.map(({ code }) => code).join(', ')}`);
  return job;
}

function packetOrThrow(job: Job) {
  const made = core.makePacket(job);
  if ('problems' in made)
    throw new Error(`${job.title}: ${made.problems.map(({ code }) => code).join(', ')}`);
  return made.packet;
}

/** From a read job to its packet, warm: every job in `jobs`, and two plain floors. */
export function calculationSteps(jobs: string): readonly Step[] {
  const calculate = (name: string, job: Job, target: number, times: number): Step => ({
    name: `calculate ${name}`,
    unit: 'ms',
    target,
    measure: () => timed(() => packetOrThrow(job), { warmUps: Math.ceil(times / 3), times }),
  });
  // 200 sq ft; and 20,000 pieces with their joints are 160 in by 158 in.
  const surface = readOrThrow(roundFloor(12, 60), 'round').surfaces[0]!;
  const tiles = squareFloor({ tile: 12, wide: 240, deep: 120, turned: 0 });
  const squares = squareFloor({ tile: 1, wide: 160, deep: 158, turned: 30 });
  return [
    ...readFolders(jobs).map(({ slug, text, file }) => calculate(slug, readOrThrow(text, file), 150, 15)),
    calculate('200 sq ft of 12 in tile', readOrThrow(tiles, 'tiles'), 100, 15),
    calculate('20,000 squares of 1 in at 30 degrees', readOrThrow(squares, 'squares'), 1500, 3),
    {
      name: 'adjust 12 corners with all diagonals',
      unit: 'ms',
      target: 20,
      measure: () => timed(() => makeAdjustment(surface), { warmUps: 10, times: 30 }),
    },
  ];
}
