import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** For each width of soft joints that are laid wide: which chalk lines lie on one, and how far off those the tile stands. */
export function linesOnSoftJoints(
  { say, length }: SheetContext,
  { chalk, movement, joint }: PacketSurface,
): readonly string[] {
  if (!movement?.laid) return [];
  const later = (chalk.later ?? []).flatMap(({ lines }) => lines);
  const snapped = [...chalk.lines, ...(chalk.further ?? []), ...later];
  const widthOf = ({ axis, from }: (typeof snapped)[number]) =>
    movement.lines.find((line) => line.axis === axis && line.at === from[axis === 'along' ? 0 : 1])?.width;
  const widths = [...new Set(movement.lines.map(({ width }) => width))].filter((width) => width > joint);
  return widths.flatMap((width) => {
    const on = snapped.filter((line) => widthOf(line) === width).map(({ name }) => name);
    const figures = { count: on.length, lines: on.join(', '), half: length(width / 2) };
    return on.length > 0 ? [say('sheet.set-out.middleSoft', figures)] : [];
  });
}
