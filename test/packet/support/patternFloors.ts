import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';
import type { Job } from '../../../src/job/Job.ts';
import { readJob } from '../../../src/job/readJob.ts';
import { makePacket } from '../../../src/packet/makePacket.ts';
import type { Packet } from '../../../src/packet/Packet.ts';

interface Floor {
  readonly tile: Readonly<Record<string, unknown>>;
  readonly joint: string;
  readonly pattern: unknown;
  readonly border?: unknown;
  readonly inlays?: unknown;
}

const FLOORS: Readonly<Record<string, Floor>> = parse(
  readFileSync(join(import.meta.dirname, '../patterns/floors.yaml'), 'utf8'),
);

/** The room that every pattern is laid in: an L, its doorway in the first wall. */
const ROOM = {
  walls: { 'A-B': '92 in', 'B-C': '51 in', 'C-D': '28 in', 'D-E': '22 in', 'E-F': '64 in', 'F-A': '73 in' },
  angles: { D: 270 },
  doorways: { hall: { in: 'A-B', 'from A': '20 in', clear: '30 in' } },
  obstacles: { flange: { circle: '7 in', 'from A-B': '40 in', 'from F-A': '15 in' } },
};

/** Every floor of the list by its name, read as a job file. */
export function patternJobs(): readonly (readonly [string, Job])[] {
  return Object.entries(FLOORS).map(([name, floor]) => [name, floorJob(name, floor)]);
}

/** A floor in that room, read as a job file. */
export function floorJob(name: string, { pattern, border, inlays, ...rest }: Floor): Job {
  const text = stringify({
    title: `Floor in ${name}`,
    revision: { letter: 'A', date: '2027-03-01' },
    ...rest,
    floor: {
      ...ROOM,
      pattern,
      ...(border !== undefined && { border }),
      ...(inlays !== undefined && { inlays }),
    },
  });
  const { job, problems } = readJob(text, 'job.yaml', name.replaceAll(' ', '-'));
  if (!job) throw new Error(`${name}: ${JSON.stringify(problems)}`);
  return job;
}

/** Packets by their job's folder: several files ask for the same floors. */
const packets = new Map<string, Packet>();

/** The packet of such a job. */
export function patternPacket(job: Job): Packet {
  const known = packets.get(job.slug);
  if (known) return known;
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  packets.set(job.slug, made.packet);
  return made.packet;
}
