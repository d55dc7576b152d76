import type { Candidate } from '../layout/Layout.ts';
import { isSlanted } from '../layout/start/mainRuns.ts';
import { otherCourses } from '../layout/start/otherCourses.ts';
import { setOut } from '../layout/start/search/setOut.ts';
import { sawDown, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { faultLines } from './faultLines.ts';
import { floorName } from './floorName.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sawnLength } from './sawnLength.ts';
import { smallestShare } from './smallestShare.ts';
import { startLine } from './startLine.ts';
import { startToKeep } from './startToKeep.ts';
import { surfaceFigures } from './surfaceFigures.ts';
import { taperTable } from './taperTable.ts';

/** The start that was chosen and those that were not, side by side, with what each costs. */
export const alternatives: Sheet = {
  name: 'alternatives',
  for: 'estimator',
  bundles: ['office', 'packet'],
  speaks: 'owner',
  make: (context) => [
    {
      landscape: true,
      data: {
        surfaces: context.packet.surfaces.map((surface) => ({
          floor: floorName(context.packet, surface.name),
          figures: figuresOf(context, surface),
          faults: faultLines(context, surface, 'some'),
          taper: taperTable(context, surface),
          keep: startLine(startToKeep(surface)),
          proof: proofOf(context, surface),
          rows: candidates(surface).map(([role, one]) => candidateRow(context, surface, role, one)),
        })),
      },
    },
  ],
};

/** What the search proves of the chosen start; undefined where the packet is older than the search. */
function proofOf(
  { say, length, longLength, number, packet }: SheetContext,
  { name, start: { score, bound } }: PacketSurface,
) {
  if (!score || !bound) return undefined;
  return say('sheet.alternatives.proof', {
    strips: longLength(score.strips),
    stripsBound: longLength(bound.strips),
    halves: longLength(score.halves),
    halvesBound: longLength(bound.halves),
    narrowestBound: number(Math.ceil(bound.narrowest * 100), 0),
    setOut: length(setOut(packet.spec.surfaces.find((one) => one.name === name)?.start ?? {})),
  });
}

/** What is told of each start. */
const ENDS = ['along', 'across'] as const;
const FIGURES = [
  'smallest',
  'pieces',
  'underHalf',
  'nearFull',
  'cutInside',
  'webFaults',
  'cutLength',
] as const;

/** Of a pattern that lies aslant to its walls no end of an axis is the size of a cut, so none is told. */
function figuresOf({ packet }: SheetContext, { name }: PacketSurface): readonly string[] {
  const spec = packet.spec.surfaces.find((one) => one.name === name);
  return spec && isSlanted(spec.pattern.turnedDeg) ? FIGURES : [...ENDS, ...FIGURES];
}

/** As many as can stand side by side on a page. */
const MOST_OTHERS = 4;

function candidates({ start }: PacketSurface): [string, Candidate][] {
  const { chosen, runnerUp } = start;
  const others = start.alternatives.filter((one) => !runnerUp || !isAlike(one, runnerUp));
  return [
    ['chosen', chosen],
    ...(runnerUp ? [['runnerUp', withReasons(runnerUp, start.alternatives)] as [string, Candidate]] : []),
    ...others.slice(0, MOST_OTHERS).map((one) => ['other', one] as [string, Candidate]),
  ];
}

/** A start that is the runner-up for a reason of its own is shown once, with both reasons. */
function withReasons(runnerUp: Candidate, alternatives: readonly Candidate[]): Candidate {
  const same = alternatives.filter((one) => isAlike(one, runnerUp));
  return { ...runnerUp, reason: [...runnerUp.reason, ...same.flatMap(({ reason }) => reason)] };
}

/** Whether two starts cannot be told apart by anything that this sheet shows. */
function isAlike(one: Candidate, other: Candidate): boolean {
  const shown = ({ pieces, whole, smallest, underHalf, nearFull, hardCuts, webFaults, ends }: Candidate) =>
    JSON.stringify([pieces, whole, smallest, underHalf, nearFull, hardCuts, webFaults, ends]);
  return shown(one) === shown(other);
}

function candidateRow(context: SheetContext, surface: PacketSurface, role: string, one: Candidate) {
  const { say, length, packet } = context;
  const { size, percent } = smallestShare(context, one);
  const sawn = (size: Ticks) => length(sawDown(size, packet.spec.print.step));
  const [left, right] = one.ends.along;
  const [near, far] = one.ends.across;
  const [otherLeft, otherRight] = otherCourses(surface.pattern, surface.joint, one.ends.along);
  const courses = (size: Ticks, other: Ticks | undefined) =>
    other === undefined ? sawn(size) : pair(sawn(size), sawn(other), '/');
  return {
    role: say(`sheet.alternatives.${role}`),
    chosen: role === 'chosen',
    reasons: saidOnce(one.reason).map((reason) => reasonText(context, surface, reason)),
    pieces: `${one.pieces} = ${one.whole} + ${one.cut}`,
    smallest: `${size} · ${percent} %`,
    underHalf: one.underHalf,
    nearFull: one.nearFull,
    cutInside: one.hardCuts,
    webFaults: one.webFaults,
    cutLength: sawnLength(context, one.cutLength),
    along: pair(courses(left, otherLeft), courses(right, otherRight)),
    across: pair(sawn(near), sawn(far)),
  };
}

/** Reasons whose `size` and `before` are sizes of pieces: told as the rows under them tell pieces, and once where both read alike. */
const OF_PIECES: ReadonlySet<string> = new Set(['start.withoutWeb', 'start.fewerTiles', 'start.evenCourses']);

function reasonText(
  context: SheetContext,
  surface: PacketSurface,
  { code, figures }: Candidate['reason'][number],
): string {
  const { step } = context.packet.spec.print;
  const sawn = Object.entries(figures).map(([key, value]) => [
    key,
    (key === 'size' || key === 'before') && typeof value === 'number' ? sawDown(value, step) : value,
  ]);
  const told = OF_PIECES.has(code) ? Object.fromEntries(sawn) : figures;
  const said = surfaceFigures(context, surface, told);
  return context.say(code, { ...said, alike: said.size === said.before ? 'yes' : 'no' });
}

/** The reason of a search for both axes at once is one reason. */
function saidOnce(reasons: Candidate['reason']): Candidate['reason'] {
  const searched = reasons.filter(({ code }) => code === 'start.searched');
  if (searched.length < 2) return reasons;
  const rest = reasons.filter(({ code }) => code !== 'start.searched');
  return [{ ...searched[0]!, figures: { ...searched[0]!.figures, axis: 'both' } }, ...rest];
}

/** Two lengths with their unit said once. */
function pair(one: string, other: string, between = '·'): string {
  const unit = other.slice(other.lastIndexOf(' '));
  return `${one.endsWith(unit) ? one.slice(0, -unit.length) : one} ${between} ${other}`;
}
