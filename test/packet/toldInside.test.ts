import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isInsideCut } from '../../src/cuts/isInsideCut.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';

const jobs = join(import.meta.dirname, '../../jobs');

// In the hall one point has a jog of a tick or two, which is sawn straight: the search counts an inner corner there, and no spare is bought.
test.each(['almond-hall', 'fernlea-boot-room'])(
  'the pieces with an inner corner of the start of %s are those that get a spare',
  (slug) => {
    const { job } = readJob(readFileSync(join(jobs, slug, 'job.yaml'), 'utf8'), slug, slug);
    const made = makePacket(job!);
    if ('problems' in made) throw new Error('a demo can be laid');
    const [surface] = made.packet.surfaces;
    const inside = surface!.cuts.filter(isInsideCut).flatMap(({ pieces }) => pieces).length;
    expect(surface!.start.chosen.hardCuts).toBe(inside);
    expect(made.packet.tiles.field!.spare).toBe(inside);
  },
);
