import type { Job, Meets } from '../job/Job.ts';
import { bayRuns } from '../layout/movement/bayRuns.ts';
import { type System, TICKS_PER_64TH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import { bayLimit, exteriorJointWidth, movementBays } from '../trade/index.ts';
import { edgeGaps } from './edgeGaps.ts';
import { fieldRuns } from './fieldRuns.ts';
import { jointDepth } from './jointDepth.ts';
import type { Laid } from './laidSurfaces.ts';

/** Joints of one width, a stretch without its strip by the widest of its edge, that take sealant: at the field's edges, across it, or over a joint of the base. Ticks. */
export interface SoftJoint {
  readonly kind: 'edge' | 'movement' | 'carried';
  /** The floor it is of. */
  readonly surface: string;
  readonly width: Ticks;
  readonly length: number;
  /** From the face of the tile to what its bed lies on. */
  readonly depth: Ticks;
}

/** Edges that stay open: the flange lies under the toilet, a tucked edge under its casing; and a drain, whose strainer tile meets at a joint (TCNA EJ171, as reported). */
const OPEN: readonly Meets[] = ['flange', 'casing', 'fold', 'drain'];

/** What a wider gap is told in, as every length is, so that two that are read as one are one: 1/64 in or half a millimetre. */
const FINEST = { inches: TICKS_PER_64TH, mm: TICKS_PER_MM / 2 } as const;

/** Every joint of a surface that is filled with sealant and not with grout, summed by width, the widest last. */
export function softJoints(laid: Laid, { base, products, print }: JointSpec): readonly SoftJoint[] {
  const depth = jointDepth({ base, products }, laid.tiles);
  const joints = [...edgeJoints(laid, print.system), ...movementJoints(laid, base.heated, print.system)];
  return joints.map((joint) => ({ ...joint, surface: laid.spec.name, depth }));
}

type JointSpec = Pick<Job, 'base' | 'products' | 'print'>;
type Flat = Omit<SoftJoint, 'depth' | 'surface'>;

/** An edge's own gap along its length, but where strips are left out: there backer and sealant fill it as wide as it gets. */
function edgeJoints({ layout: { frame, left } }: Laid, system: System): readonly Flat[] {
  const lengths = new Map<Ticks, number>();
  const asPrinted = (gap: Ticks) => Math.round(gap / FINEST[system]) * FINEST[system];
  const add = (width: Ticks, length: number) => lengths.set(width, (lengths.get(width) ?? 0) + length);
  for (const { edge, length, out } of edgeGaps(frame, left)) {
    if (OPEN.includes(edge.meets)) continue;
    add(edge.gap, length - (out?.length ?? 0));
    if (out) add(Math.max(edge.gap, asPrinted(out.gap)), out.length);
  }
  return [...lengths]
    .filter(([width, length]) => width > 0 && length > 0)
    .sort(([a], [b]) => a - b)
    .map(([width, length]) => ({ kind: 'edge', width, length }));
}

/** Lines on joints of the tile by their length; where the pattern has none, as many as bays need, from side to side. */
function movementJoints({ spec, layout }: Laid, heated: boolean, system: System): readonly Flat[] {
  const limit = bayLimit(spec.exposure, heated, system);
  const lengths = new Map<Ticks, number>();
  for (const { width, length } of layout.movement?.lines ?? [])
    lengths.set(width, (lengths.get(width) ?? 0) + length);
  const placed = [...lengths].sort(([a], [b]) => a - b);
  const runs = fieldRuns(layout);
  const parted = bayRuns(layout, layout.movement?.lines ?? []);
  const unplaced = parted.flatMap((run, axis): [Ticks, number][] => {
    const { bays, each } = movementBays(run, limit);
    if (bays === 1) return [];
    const width = spec.exposure === 'outside' ? exteriorJointWidth(each) : layout.pattern.joint;
    return [[width, (bays - 1) * runs[1 - axis]!]];
  });
  return [...placed, ...unplaced].map(([width, length]) => ({ kind: 'movement', width, length }));
}
