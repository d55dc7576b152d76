import { bounds } from '../../geometry/index.ts';
import { type System, TICKS_PER_FOOT, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { FramedRoom, StoryPole } from '../Layout.ts';

/** A stick longer than this is not carried: 8 ft or 2400 mm; common practice, no source. */
function longestPole(system: System): Ticks {
  return system === 'inches' ? 8 * TICKS_PER_FOOT : 2400 * TICKS_PER_MM;
}

/**
 * A stick for each axis with every joint on it, counted from the middle of the joint under a chalk line, as
 * long as the room asks and a hand carries; one stick where both axes have one module.
 */
export function storyPoles({ outline }: FramedRoom, { module }: Pattern, system: System): StoryPole[] {
  const { minX, minY, maxX, maxY } = bounds(outline);
  const poles = ([0, 1] as const).map((axis): StoryPole => {
    const most = Math.min(longestPole(system), axis === 0 ? maxX - minX : maxY - minY);
    const count = Math.floor(most / module[axis]);
    return {
      axis: axis === 0 ? 'along' : 'across',
      module: module[axis],
      joints: Array.from({ length: count }, (_, n) => (n + 1) * module[axis]),
    };
  });
  const longest = poles.reduce((a, b) => (b.joints.length > a.joints.length ? b : a));
  return module[0] === module[1] ? [longest] : poles;
}
