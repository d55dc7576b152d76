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

/** A soft joint with what backs it, in sizes as they are printed; what does not fit is told in them. */
interface Backed {
  readonly joint: SoftJoint;
  readonly kind: 'backer' | 'tape';
  readonly size: Ticks;
  readonly sum: 'rod' | 'shallow' | 'narrow';
  readonly diameter: Ticks;
}

function backed(joint: SoftJoint, system: System): Backed {
  const { kind, size, diameter = 0 } = jointBacking(joint.width, joint.depth);
  const printed = (ticks: Ticks) => onGrid(ticks, system, {});
  const sum = kind === 'backer' ? 'rod' : diameter > 0 ? 'shallow' : 'narrow';
  return { joint, kind, size: printed(size), sum, diameter: printed(diameter) };
}

const keyOf = ({ kind, size }: Backed) => `${kind} ${size}`;

function backingLine(all: readonly Backed[], asked: readonly Backed[], system: System): Material {
  const { kind, size } = all[0]!;
  const amount = metres(all.reduce((sum, { joint }) => sum + joint.length, 0));
  const fact = kind === 'backer' ? BACKER : BOND_BREAKER;
  return {
    what: kind,
    size,
    sum: [
      ...all.map((one) => step(one, system)),
      ...asked.map((one) => ({
        code: `material.${one.kind}.sum.open`,
        figures: { size: one.size, runMetres: metres(one.joint.length) },
      })),
    ],
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

/** Backer and sealant are told with what both come to, in printed sizes, so that the reader holds it against the joint. */
function step({ joint, kind, sum, diameter }: Backed, system: System): Step {
  const sealant = onGrid(sealantDepth(joint.width), system, {});
  const fit = { diameter, sealant, both: diameter + sealant };
  return {
    code: `material.${kind}.sum.${sum}`,
    figures: {
      width: joint.width,
      jointDepth: joint.depth,
      ...(sum === 'narrow' ? {} : fit),
      runMetres: metres(joint.length),
    },
  };
}

function metres(ticks: number): number {
  return rounded(ticks / (1000 * TICKS_PER_MM), 3);
}
