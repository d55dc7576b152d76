import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Mark } from './Mark.ts';
import { markBounds, moveMarks, trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { mmPerTick } from './Scale.ts';
import {
  heightMarks,
  layerColumn,
  type SectionLook,
  type SectionOf,
  thickness,
  undercutBlock,
} from './sectionParts.ts';
import { sizes } from './text.ts';

export type { SectionOf };

/** Highest column on the paper, the widest that a section may be unless told, and what stands between two parts, in mm. */
const mostHigh = 60;
const mostWide = 184;
const between = 6;
const edge = 2;
const wordSizes = [sizes.name, 9, sizes.smallest];

/** Parts side by side on one ground line; what has no room left begins another line below. */
function inLines(parts: readonly (readonly Mark[])[], widest: number): readonly (readonly Mark[])[] {
  const lines: { marks: Mark[]; right: number; bottom: number; top: number }[] = [];
  for (const part of parts) {
    const box = markBounds(part);
    const wide = box.right - box.left;
    const last = lines.at(-1);
    const line = last && last.right + between + wide <= widest ? last : undefined;
    const x = line ? line.right + between : 0;
    const moved = moveMarks(part, [x - box.left, 0]);
    if (line) {
      line.marks.push(...moved);
      line.right = x + wide;
      line.bottom = Math.min(line.bottom, box.bottom);
      line.top = Math.max(line.top, box.top);
    } else lines.push({ marks: [...moved], right: wide, bottom: box.bottom, top: box.top });
  }
  const downs = lines.map((_, i) =>
    lines.slice(1, i + 1).reduce((sum, line, k) => sum + lines[k]!.bottom - between - line.top, 0),
  );
  return lines.map(({ marks }, i) => moveMarks(marks, [0, downs[i]!]));
}

function partsOf(packet: SectionOf, options: DrawOptions, look: SectionLook): readonly (readonly Mark[])[] {
  const { base } = packet;
  const { say } = options;
  const kept = base.kept.map((layer) => ({ layer, gone: false }));
  const before = [...kept, ...base.removed.map((layer) => ({ layer, gone: true }))];
  const after = [...kept, ...base.fresh.map((layer) => ({ layer, gone: false }))];
  const face = thickness(after.map(({ layer }) => layer)) * look.perTick;
  return [
    layerColumn(before, base.below, say('drawing.section.before'), look),
    [
      ...layerColumn(after, base.below, say('drawing.section.after'), look),
      ...heightMarks(packet, face, look),
    ],
    ...(packet.isUndercut ? [undercutBlock(packet, say('drawing.section.block'), look)] : []),
  ];
}

/**
 * The layers on the bare base, before and after, and the block under the saw where a jamb is cut, true to scale: what comes up is dashed and
 * crossed, what was measured in height stands as a dashed line with its height over the face of the new tile.
 */
export function drawSection(packet: SectionOf, options: DrawOptions & { readonly widest?: number }): Drawing {
  const { kept, removed, fresh } = packet.base;
  const high = Math.max(...[removed, fresh].map((layers) => thickness(kept) + thickness(layers)));
  const ratio = [1, 2, 4].find((one) => high * mmPerTick(one) <= mostHigh) ?? 8;
  const widest = (options.widest ?? mostWide) - 2 * edge;
  const linesAt = (size: number) => {
    const { system, decimal } = options;
    const look = { perTick: mmPerTick(ratio), size, system, decimal };
    const parts = partsOf(packet, options, look);
    return { lines: inLines(parts, widest), together: inLines(parts.slice(0, 2), widest).length === 1 };
  };
  // Smaller words where they bring the column before beside the column after.
  const tries = wordSizes.map(linesAt);
  const { marks, ...size } = trimmed(
    (tries.find(({ together }) => together) ?? tries[0]!).lines.flat(),
    edge,
  );
  return penSvg(marks, { id: options.id, label: options.label, ratio, ...size });
}
