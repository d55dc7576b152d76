import type { Ring } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';

const size = 120;
const border = 2;

function path(ring: Ring, place: (x: number, y: number) => string): string {
  return `M${ring.map(([x, y]) => place(x, y)).join('L')}Z`;
}

/** The plan of a surface as a small SVG, outline and pieces, the room as it was walked. */
export function thumbnail(surface: PacketSurface | undefined): string {
  if (!surface) return '';
  const turn = (surface.turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = (ring: Ring): Ring => ring.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos]);
  const outline = turned(surface.outline);
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [minX, maxY] = [Math.min(...xs), Math.max(...ys)];
  const scale = (size - 2 * border) / Math.max(Math.max(...xs) - minX, maxY - Math.min(...ys), 1);
  const place = (x: number, y: number) =>
    `${((x - minX) * scale + border).toFixed(1)} ${((maxY - y) * scale + border).toFixed(1)}`;
  const few = surface.pieces.length <= 2000 ? surface.pieces : [];
  const pieces = few.map((piece) => path(turned(piece.shape.outer), place)).join('');
  return (
    `<svg viewBox="0 0 ${size} ${size}" width="${size}" height="${size}" aria-hidden="true">` +
    `<path d="${path(outline, place)}" fill="none" stroke="currentColor" stroke-width="1.5"/>` +
    `<path d="${pieces}" fill="none" stroke="currentColor" stroke-width="0.4"/></svg>`
  );
}
