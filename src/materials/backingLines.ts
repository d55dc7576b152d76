import { onGrid, type System, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import { BACKER, BOND_BREAKER, jointBacking, type Step, sealantDepth } from '../trade/index.ts';
import type { Material } from './Material.ts';
import { rounded } from './rounded.ts';
import type { SoftJoint } from './softJoints.ts';
import { wholeLength } from './wholeLength.ts';

/**
 * What lies under the sealant of soft joints, a line for each size that is bought: round backer where it and its sealant go into the
 * depth of the joint, else tape as wide as the joint. Of joints that nobody has decided on yet, `open`, it is told and not counted.
 */
export function backingLines(
  joints: readonly SoftJoint[],
  system: System,
  open: readonly SoftJoint[],
): readonly Material[] {
  const undecided = open.map((joint) => backed(joint, system));
  const lines = new Map<string, Backed[]>();
  for (const one of joints.map((joint) => backed(joint, system)))
    lines.set(keyOf(one), [...(lines.get(keyOf(one)) ?? []), one]);
  const keys = [...lines.keys()];
  // What would be of no size that is bought anyhow is told on the last line.
  const lineOf = (one: Backed) => (lines.has(keyOf(one)) ? keyOf(one) : keys.at(-1));
  return [...lines].map(([key, all]) => {
    const asked = undecided.filter((one) => lineOf(one) === key);
    return backingLine(all, asked, system);
  });
}

type Figures = Readonly<Record<string, number>>;

/** A soft joint with what backs it, in sizes as they are printed, so that the reader holds what is told of them against the joint. */
interface Backed {
  readonly joint: SoftJoint;
  readonly kind: 'backer' | 'tape';
  readonly size: Ticks;
  readonly diameter: Ticks;
  readonly sum: 'rod' | 'shallow' | 'narrow';
  /** What backer and sealant come to in the depth of the joint. */
  readonly fit: Figures;
}

function backed(joint: SoftJoint, system: System): Backed {
  const { kind, size, diameter: exact = 0 } = jointBacking(joint.width, joint.depth);
  const printed = (ticks: Ticks) => onGrid(ticks, system, {});
  const [diameter, sealant] = [printed(exact), printed(sealantDepth(joint.width))];
  const sum = kind === 'backer' ? 'rod' : diameter > 0 ? 'shallow' : 'narrow';
  const jointDepth = joint.depth;
  const fit: Figures =
    sum === 'narrow' ? { jointDepth } : { jointDepth, diameter, sealant, both: diameter + sealant };
  return { joint, kind, size: printed(size), diameter, sum, fit };
}

const keyOf = ({ kind, size }: Backed) => `${kind} ${size}`;

function backingLine(all: readonly Backed[], asked: readonly Backed[], system: System): Material {
  const { kind, size } = all[0]!;
  const amount = metres(all.reduce((sum, { joint }) => sum + joint.length, 0));
  const fact = kind === 'backer' ? BACKER : BOND_BREAKER;
  return {
    what: kind,
    size,
    sum: [...all.map(runStep), ...fitSteps(all), ...asked.map(openStep)],
    rate:
      kind === 'backer'
        ? { value: BACKER.value, unit: 'diameterPerWidth' }
        : { value: 1, unit: 'widthPerWidth' },
    mark: fact.mark,
    source: fact.source,
    amount,
    unit: 'metre',
    buy: wholeLength(amount, system),
    buyUnit: 'metre',
  };
}

const sizesOf = ({ kind, joint, diameter }: Backed): Figures =>
  kind === 'backer' ? { width: joint.width, diameter } : { width: joint.width };

function runStep(one: Backed): Step {
  const { kind, joint, sum, fit } = one;
  const figures = { surface: joint.surface, ...sizesOf(one), runMetres: metres(joint.length) };
  return {
    code: `material.${kind}.sum.${sum}`,
    figures: kind === 'backer' ? figures : { ...figures, ...fit },
  };
}

/** That backer and sealant go into the joint, once for each depth. */
function fitSteps(all: readonly Backed[]): readonly Step[] {
  const depths = new Map(all.map(({ joint, kind, fit }) => [joint.depth, { kind, fit }]));
  return [...depths.values()].flatMap(({ kind, fit }) =>
    kind === 'backer' ? [{ code: 'material.backer.sum.fits', figures: fit }] : [],
  );
}

function openStep(one: Backed): Step {
  return {
    code: `material.${one.kind}.sum.open`,
    figures: { surface: one.joint.surface, ...sizesOf(one), runMetres: metres(one.joint.length) },
  };
}

function metres(ticks: number): number {
  return rounded(ticks / (1000 * TICKS_PER_MM), 3);
}
