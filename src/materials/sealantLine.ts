import { litresOf, TICKS_PER_MM } from '../measure/index.ts';
import { jointBacking, SEALANT_DEPTH, SEALANT_WASTE, type Step } from '../trade/index.ts';
import type { Material } from './Material.ts';
import { packages, rounded } from './rounded.ts';
import type { SoftJoint } from './softJoints.ts';

/**
 * Sealant by the volume of every soft joint, as deep as what backs it leaves. What joints would add of which nobody has decided yet
 * whether they are soft joints, `open`, is told and not counted. No line where there is no soft joint.
 */
export function sealantLine(
  sealant: { readonly name?: string; readonly tubeLitres: number },
  joints: readonly SoftJoint[],
  open: readonly SoftJoint[] = [],
): readonly Material[] {
  if (joints.length === 0) return [];
  const litres = joints.reduce((sum, joint) => sum + volume(joint), 0);
  const needed = litres * (1 + SEALANT_WASTE.value);
  const tubes = packages(needed / sealant.tubeLitres);
  return [
    {
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
          figures: { surface: run.surface, runMetres: metres(run.length), sealantLitres: volume(run) },
        })),
      ],
      rate: { value: SEALANT_DEPTH.value, unit: 'depthPerWidth' },
      mark: SEALANT_DEPTH.mark,
      source: SEALANT_DEPTH.source,
      amount: needed,
      unit: 'litre',
      buy: tubes,
      buyUnit: 'tube',
    },
  ];
}

function jointStep(joint: SoftJoint): Step {
  return {
    code: `material.sealant.sum.${joint.kind}`,
    figures: {
      surface: joint.surface,
      width: joint.width,
      depth: jointBacking(joint.width, joint.depth).sealant,
      runMetres: metres(joint.length),
      sealantLitres: volume(joint),
    },
  };
}

function volume({ width, length, depth }: SoftJoint): number {
  return litresOf(width * jointBacking(width, depth).sealant * length);
}

function metres(ticks: number): number {
  return rounded(ticks / (1000 * TICKS_PER_MM), 3);
}
