import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { readJob } from '../../src/job/readJob.ts';
import { layAnother } from '../../src/layout/layAnother.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeCurve } from '../../src/packet/makeCurve.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { readWords } from '../../src/site/words.ts';
import { makeTilePlans } from '../../src/tiles/makeTilePlans.ts';

const jobs = join(import.meta.dirname, '../../jobs');

/** A demo's floor with its curve, and how many tiles lay it from another start. */
function floorOf(slug: string) {
  const { job } = readJob(readFileSync(join(jobs, slug, 'job.yaml'), 'utf8'), slug, slug);
  const [surface] = job!.surfaces;
  const made = makeRoom(surface!, job!.print.system);
  if ('problems' in made) throw new Error('a demo is a room');
  const { room } = made;
  const layout = makeLayout(job!, surface!, room);
  if ('problems' in layout) throw new Error('a demo can be laid');
  const tilesFrom = (candidate: (typeof layout)['start']['chosen']) => {
    const laid = layAnother(layout, surface!, room, job!.print.step, candidate);
    return makeTilePlans(job!, [laid], [makeCuts(job!, laid)]).field!.needed;
  };
  const curve = makeCurve(job!, { surface: surface!, room, layout, cuts: makeCuts(job!, layout) });
  return { layout, curve, tilesFrom };
}

describe.each(['rowan-bath', 'sedge-washroom', 'fernlea-boot-room'])(
  'the curve beside the other starts that %s compares',
  (slug) => {
    const { layout, curve, tilesFrom } = floorOf(slug);
    const { chosen, runnerUp, alternatives } = layout.start;
    const beside = [...(runnerUp ? [runnerUp] : []), ...alternatives].filter(
      ({ slivers = 0, walls }) =>
        slivers <= (chosen.slivers ?? 0) && (walls?.strips ?? 0) <= (chosen.walls?.strips ?? 0),
    );

    test('takes fewer tiles at each of its starts than any of them that a line names with as wide a narrowest cut', () => {
      expect(beside.length).toBeGreaterThan(0);
      // Of tiles that lie in no courses no cut at a wall says where they stand.
      if (!layout.pattern.inCourses) return;
      for (const one of beside) {
        const tiles = tilesFrom(one);
        const less = curve
          .slice(1)
          .filter(({ candidate }) => candidate.smallestShare < one.smallestShare - 0.005);
        for (const point of less) expect(point.tiles, `${point.candidate.smallestShare}`).toBeLessThan(tiles);
      }
    });
  },
);

// In the washroom the runner-up takes as few tiles as a start of the curve, with a wider narrowest cut: hexagons lie in no courses.
test('the sheet says of which starts its promise holds, in every language', () => {
  const words = readWords(join(jobs, '../layouts/words'));
  const how = words.languages.map((lang) => words.say(lang)('sheet.starts-curve.how'));
  for (const one of how)
    expect(one).toMatch(/line of the job file|línea del archivo de obra|linha do arquivo da obra/);
});
