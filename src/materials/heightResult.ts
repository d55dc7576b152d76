import type { HeightSpec } from '../job/Job.ts';
import { onGrid, type System, type Ticks } from '../measure/index.ts';
import { doorGap, FLANGE, flangeSpacers, inches, threshold, tightUnder } from '../trade/index.ts';
import type { HeightResult } from './Heights.ts';

/** Heights in ticks over the finished tile: `after` of the thing itself; `fresh` is the thickness of the new layers. */
interface Found {
  readonly spec: HeightSpec;
  readonly after: Ticks;
  readonly fresh: Ticks;
  readonly system: System;
  /** Whether the floor falls to a drain where the thing stands: how much lower the tile is there depends on its bed. */
  readonly onFall: boolean;
}

/** What follows from one measured height once the tile is down. */
export function heightResult(found: Found): HeightResult {
  const { spec, after } = found;
  const verdict = {
    flange: flangeVerdict,
    door: doorVerdict,
    floor: floorVerdict,
    appliance: applianceVerdict,
    other: otherVerdict,
  }[spec.kind](found);
  return { name: spec.name, kind: spec.kind, after, ...verdict };
}

type Verdict = Pick<HeightResult, 'pass' | 'code' | 'figures'>;

function flangeVerdict({ spec, after, system, onFall }: Found): Verdict {
  const { pass, rings: exact } = flangeSpacers(after, spec.wanted ?? inches(FLANGE.value.wanted));
  // Rings are added up as they are printed.
  const rings = exact.map((ring) => onGrid(ring, system, {}));
  const limits = { least: inches(FLANGE.value.least), most: inches(FLANGE.value.most) };
  if (onFall) return { pass: false, code: 'height.flange.onFall', figures: limits };
  if (!pass && after > 0)
    return { pass, code: 'height.flange.tooHigh', figures: { height: after, ...limits } };
  if (!pass) return { pass, code: 'height.flange.tooLow', figures: { height: -after, ...limits } };
  if (rings.length === 0) return { pass, code: 'height.flange.fits', figures: { height: after, ...limits } };
  const sum = rings.reduce((total, ring) => total + ring, 0);
  const thick = rings.filter((ring) => ring === rings[0]).length;
  const figures = {
    below: -after,
    spacers: sum,
    thickCount: thick,
    thick: rings[0]!,
    thinCount: rings.length - thick,
    thin: rings[rings.length - 1]!,
    raised: after + sum,
  };
  return { pass, code: 'height.flange.spacers', figures };
}

function doorVerdict({ spec, after, system }: Found): Verdict {
  const wanted = spec.wanted ?? doorGap(system);
  const trim = wanted - after;
  return trim > 0
    ? { pass: false, code: 'height.door.trim', figures: { trim, wanted } }
    : { pass: true, code: 'height.door.clears', figures: { height: after, wanted } };
}

function floorVerdict({ after }: Found): Verdict {
  const { kind, rise, run } = threshold(after);
  const side = after > 0 ? 'higher' : 'lower';
  const code = kind === 'flush' ? 'height.floor.flush' : `height.floor.${kind}.${side}`;
  return { pass: kind !== 'ramp', code, figures: { step: Math.abs(after), rise, run } };
}

function applianceVerdict({ spec, after, fresh, system }: Found): Verdict {
  if (spec.wanted === undefined)
    return { pass: false, code: 'height.appliance.measure', figures: { height: after } };
  const over = after - spec.wanted;
  const figures = { height: after, wanted: spec.wanted, freshMost: Math.max(0, fresh + over) };
  const fits = over < tightUnder(system) ? 'tight' : 'fits';
  return over >= 0
    ? { pass: true, code: `height.appliance.${fits}`, figures: { ...figures, over } }
    : { pass: false, code: 'height.appliance.tooHigh', figures: { ...figures, short: -over } };
}

function otherVerdict({ spec, after }: Found): Verdict {
  if (spec.wanted === undefined)
    return { pass: true, code: 'height.other.after', figures: { height: after } };
  const pass = after >= spec.wanted;
  return {
    pass,
    code: `height.other.${pass ? 'fits' : 'short'}`,
    figures: { height: after, wanted: spec.wanted },
  };
}
