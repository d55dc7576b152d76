import type { Cuts } from '../cuts/Cut.ts';
import { isInsideCut } from '../cuts/isInsideCut.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Candidate, Layout, Start } from '../layout/Layout.ts';
import { layAnother } from '../layout/layAnother.ts';
import type { Room } from '../room/Room.ts';
import { cutsWithoutRows } from './cutsWithoutRows.ts';

/** A floor that is laid and sawn. */
interface Sawn {
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly layout: Layout;
  readonly cuts: Cuts;
}

/** The pieces that are cut into their tile, each of which gets a spare. */
export function insideCuts({ cuts }: Pick<Cuts, 'cuts'>): number {
  return cuts.filter(isInsideCut).reduce((sum, { pieces }) => sum + pieces.length, 0);
}

/**
 * The starts that are compared, with as many pieces cut into their tile as the saw finds and spares are counted for: the search counts by
 * outlines, where a jog is an inner corner that is sawn straight. Where pieces lie apart from the pattern the counts of the search stand,
 * as they do for a start with another joint.
 */
export function toldInside(job: Job, { surface, room, layout, cuts }: Sawn): Start {
  const { start } = layout;
  const inside = insideCuts(cuts);
  // Where both counts agree on the chosen start no jog is in play, and the others are not laid again for it.
  if (inside === start.chosen.hardCuts || layout.pieces.length !== start.chosen.pieces) return start;
  const told = (one: Candidate): Candidate => {
    if (one.hardCuts === 0 || one.reason.some(({ code }) => code === 'start.easedJoint')) return one;
    const laid = layAnother(layout, surface, room, job.print.step, one);
    return { ...one, hardCuts: insideCuts(cutsWithoutRows(job, sawn(laid))) };
  };
  return {
    ...start,
    chosen: { ...start.chosen, hardCuts: inside },
    ...(start.runnerUp && { runnerUp: told(start.runnerUp) }),
    alternatives: start.alternatives.map(told),
  };
}

/** What of a layout is sawn: whole tiles make no cut. */
function sawn(layout: Layout): Layout {
  return { ...layout, pieces: layout.pieces.filter(({ whole }) => !whole) };
}
