import type { Point } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf, overlap } from './boxes.ts';
import type { Space } from './Drawing.ts';
import type { PlanPart, PlanParts, Side } from './PlanParts.ts';
import type { Orientation } from './pickScale.ts';
import { extent, mmPerTick, type Scale, scaleFor, toPaper } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';

/** A piece that reaches less than this into a part, in ticks, asks for no page of its own there. */
const least = 320;

interface Counts {
  readonly orientation: Orientation;
  readonly columns: number;
  readonly rows: number;
}

type Size = { readonly width: number; readonly height: number };

function counts(size: Size, space: Space, ratio: number, border: number, orientation: Orientation): Counts {
  const many = (ticks: number, mm: number) =>
    Math.max(1, Math.ceil((ticks * mmPerTick(ratio)) / (mm - 2 * border) - 1e-9));
  return {
    orientation,
    columns: many(size.width, space.widthMm),
    rows: many(size.height, space.heightMm),
  };
}

/** The scale that puts ticks of the room's frame, from its lower left, on the paper unchanged. */
function frameOf(surface: PacketSurface): Scale {
  return { ...scaleFor(surfacePoints(surface), surface.turn, 1, [0, 0]), paperMmPerTick: 1 };
}

function windowsOf(pieces: readonly Box[], box: Box, { columns, rows }: Counts) {
  const [wide, high] = [(box.right - box.left) / columns, (box.top - box.bottom) / rows];
  const all = Array.from({ length: columns * rows }, (_, i) => {
    const [column, row] = [i % columns, rows - 1 - Math.floor(i / columns)];
    const [left, bottom] = [box.left + column * wide, box.bottom + row * high];
    return { column, row, window: { left, bottom, right: left + wide, top: bottom + high } };
  });
  return all.filter(({ window }) => pieces.some((piece) => overlap(piece, window, -least)));
}

const steps: Readonly<Record<Side, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  below: [0, -1],
  above: [0, 1],
};

/**
 * Cuts a plan, or what of it lies round some of its points, into parts of equal size that fit the pages, lying the way that takes fewer of
 * them; none where no tile lies.
 */
export function planGrid(
  surface: PacketSurface,
  spaces: Readonly<Record<Orientation, Space>>,
  ratio: number,
  border: number,
  points: readonly Point[] = surfacePoints(surface),
): PlanParts {
  const size = extent(points, surface.turn);
  const frame = frameOf(surface);
  const inFrame = (ring: readonly Point[]) => boxOf(ring.map((point) => toPaper(frame, point)));
  const upright = counts(size, spaces.portrait, ratio, border, 'portrait');
  const flat = counts(size, spaces.landscape, ratio, border, 'landscape');
  const chosen = flat.columns * flat.rows < upright.columns * upright.rows ? flat : upright;
  const pieces = surface.pieces.map(({ shape }) => inFrame(shape.outer));
  const windows = windowsOf(pieces, inFrame(points), chosen);
  const numberAt = (column: number, row: number) =>
    windows.findIndex((one) => one.column === column && one.row === row) + 1;
  const parts = windows.map(({ column, row, window }, i): PlanPart => {
    const next = Object.entries(steps).flatMap(([side, [dx, dy]]) => {
      const number = numberAt(column + dx, row + dy);
      return number > 0 ? [[side, number]] : [];
    });
    return { number: i + 1, window, next: Object.fromEntries(next) };
  });
  return { ratio, orientation: chosen.orientation, border, parts };
}
