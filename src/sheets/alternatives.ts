import type { Candidate } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { faultLines } from './faultLines.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { surfaceFigures } from './surfaceFigures.ts';

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
          name: surface.name,
          faults: faultLines(context, surface),
          rows: candidates(surface).map(([role, one]) => candidateRow(context, surface, role, one)),
        })),
      },
    },
  ],
};

/** As many as can stand side by side on a page. */
const MOST_OTHERS = 4;

function candidates({ start }: PacketSurface): [string, Candidate][] {
  return [
    ['chosen', start.chosen],
    ...(start.runnerUp ? [['runnerUp', start.runnerUp] as [string, Candidate]] : []),
    ...start.alternatives.slice(0, MOST_OTHERS).map((one) => ['other', one] as [string, Candidate]),
  ];
}

function candidateRow(context: SheetContext, surface: PacketSurface, role: string, one: Candidate) {
  const { say, length, longLength, number } = context;
  const [left, right] = one.ends.along;
  const [near, far] = one.ends.across;
  return {
    role: say(`sheet.alternatives.${role}`),
    chosen: role === 'chosen',
    reasons: one.reason.map(({ code, figures }) => say(code, surfaceFigures(context, surface, figures))),
    pieces: one.pieces,
    whole: one.whole,
    cut: one.cut,
    smallest: length(one.smallest),
    smallestShare: `${number(one.smallestShare * 100, 0)} %`,
    underHalf: one.underHalf,
    nearFull: one.nearFull,
    hardCuts: one.hardCuts,
    webFaults: one.webFaults,
    cutLength: longLength(one.cutLength),
    along: `${length(left)} · ${length(right)}`,
    across: `${length(near)} · ${length(far)}`,
  };
}
