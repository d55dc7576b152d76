import { litresOf, type System, TICKS_PER_MM } from '../measure/index.ts';
import { BACKER, inches, SEALANT_DEPTH, SEALANT_WASTE, type Step, sealantDepth } from '../trade/index.ts';
import type { CarriedRun } from './carriedRuns.ts';
import type { Material } from './Material.ts';
import { packages, rounded } from './rounded.ts';
import type { SoftJoint } from './softJoints.ts';
import { wholeLength } from './wholeLength.ts';

/** Joints narrower than this have no room for a round backer. */
const BACKER_FROM = inches(3 / 16);

/**
 * Sealant by the volume of every soft joint, and the backer under those wide enough for one. What joints would add of which nobody has
 * decided yet whether they are soft joints, `open`, is told and not counted.
 */
export function sealantLines(
  sealant: { readonly name?: string; readonly tubeLitres: number },
  joints: readonly SoftJoint[],
  system: System,
  open: readonly CarriedRun[] = [],
): readonly Material[] {
  if (joints.length === 0) return [];
  const litres = joints.reduce((sum, joint) => sum + volume(joint), 0);
  const needed = litres * (1 + SEALANT_WASTE.value);
  const tubes = packages(needed / sealant.tubeLitres);
  const tube: Material = {
    what: 'sealant',
    ...(sealant.name === undefined ? {} : { name: sealant.name }),
    sum: [
      ...joints.map(jointStep),
      {
        code: 'material.sealant.sum.tubes',
        figures: {
          sealantLitres: needed,
          wasteShare: SEALANT_WASTE.value,
          tubeLitres: sealant.tubeLitres,
          tubeCount: tubes,
        },
      },
      ...open.map((run) => ({
        code: 'material.sealant.sum.open',
        figures: { runMetres: metres(run.length), sealantLitres: volume(run) },
      })),
    ],
    rate: { value: SEALANT_DEPTH.value, unit: 'depthPerWidth' },
    mark: SEALANT_DEPTH.mark,
    source: SEALANT_DEPTH.source,
    amount: needed,
    unit: 'litre',
    buy: tubes,
    buyUnit: 'tube',
  };
  return [tube, ...backerLines(joints, system, open)];
}

function jointStep(joint: SoftJoint): Step {
  return {
    code: `material.sealant.sum.${joint.kind}`,
    figures: {
      width: joint.width,
      depth: sealantDepth(joint.width),
      runMetres: metres(joint.length),
      sealantLitres: volume(joint),
    },
  };
}

function backerLines(
  joints: readonly SoftJoint[],
  system: System,
  open: readonly CarriedRun[],
): readonly Material[] {
  const wide = joints.filter(({ width }) => width >= BACKER_FROM);
  if (wide.length === 0) return [];
  const amount = metres(wide.reduce((sum, { length }) => sum + length, 0));
  return [
    {
      what: 'backer',
      sum: [
        ...wide.map(({ width, length }) => ({
          code: 'material.backer.sum.rod',
          figures: { width, diameter: Math.round(width * BACKER.value), runMetres: metres(length) },
        })),
        ...open
          .filter(({ width }) => width >= BACKER_FROM)
          .map(({ width, length }) => ({
            code: 'material.backer.sum.open',
            figures: { diameter: Math.round(width * BACKER.value), runMetres: metres(length) },
          })),
      ],
      rate: { value: BACKER.value, unit: 'diameterPerWidth' },
      mark: BACKER.mark,
      source: BACKER.source,
      amount,
      unit: 'metre',
      buy: wholeLength(amount, system),
      buyUnit: 'metre',
    },
  ];
}

function volume({ width, length }: Pick<SoftJoint, 'width' | 'length'>): number {
  return litresOf(width * sealantDepth(width) * length);
}

function metres(ticks: number): number {
  return rounded(ticks / (1000 * TICKS_PER_MM), 3);
}
