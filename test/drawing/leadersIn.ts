import { type Box, grow, segmentMeets } from '../../src/drawing/boxes.ts';
import type { Spot } from '../../src/drawing/Mark.ts';
import { textsIn } from './readSvg.ts';

/** A thin line from a dot in a piece to the piece's name outside, in mm, y down. */
export type Line = readonly [Spot, Spot];

/** A name of a piece with the number of its cut beside it or under it. */
interface Label {
  readonly name: string;
  readonly boxes: readonly Box[];
}

/** The leaders of an SVG: thin lines of two ends that begin at the middle of a dot. */
export function leadersIn(svg: string): Line[] {
  const dots = [...svg.matchAll(/<path d="([^"]*)" fill="#000"\/>/g)]
    .flatMap(([, d]) => [...d!.matchAll(/M([-\d.]+),([-\d.]+)A0\.5,0\.5,[^M]*/g)])
    .map(([, x, y]): Spot => [Number(x) - 0.5, Number(y)]);
  const lines = [...svg.matchAll(/<path d="([^"]*)" fill="none" stroke="#000" stroke-width="0\.18"\/>/g)]
    .flatMap(([, d]) => [...d!.matchAll(/M([-\d.]+),([-\d.]+)L([-\d.]+),([-\d.]+)(?=M|$)/g)])
    .map(([, ...ends]): Line => {
      const [x, y, toX, toY] = ends.map(Number) as [number, number, number, number];
      return [
        [x, y],
        [toX, toY],
      ];
    });
  return lines.filter(([[x, y]]) => dots.some((dot) => Math.hypot(dot[0] - x, dot[1] - y) < 0.01));
}

/** Names, each with the number that is written right after it and stands at it. */
function labelsIn(svg: string): Label[] {
  const texts = textsIn(svg);
  const box = ({ left, right, top, bottom }: (typeof texts)[number]): Box => ({
    left,
    right,
    bottom: top,
    top: bottom,
  });
  return texts.flatMap((one, i) => {
    if (/^\d+$/.test(one.words)) return [];
    const next = texts[i + 1];
    const own = next && /^\d+$/.test(next.words) && isBeside(box(one), box(next));
    return [{ name: one.words, boxes: own ? [box(one), grow(box(next), 0.8)] : [box(one)] }];
  });
}

const isBeside = (a: Box, b: Box) =>
  a.left < b.right + 3.5 && b.left < a.right + 3.5 && a.bottom < b.top + 3.5 && b.bottom < a.top + 3.5;

/** Nearest distance of two lines that do not cross, by their ends. */
export function apartMm(a: Line, b: Line): number {
  const toLine = ([x, y]: Spot, [[ax, ay], [bx, by]]: Line) => {
    const long = (bx - ax) ** 2 + (by - ay) ** 2;
    const share =
      long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long));
    return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
  };
  const side = ([[ax, ay], [bx, by]]: Line, [x, y]: Spot) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  const cross = side(a, b[0]) * side(a, b[1]) < 0 && side(b, a[0]) * side(b, a[1]) < 0;
  return cross ? 0 : Math.min(toLine(a[0], b), toLine(a[1], b), toLine(b[0], a), toLine(b[1], a));
}

/** How far a label is from a spot. */
const offMm = ({ boxes }: Label, [x, y]: Spot): number =>
  Math.min(
    ...boxes.map(({ left, right, bottom, top }) =>
      Math.hypot(Math.max(left - x, 0, x - right), Math.max(bottom - y, 0, y - top)),
    ),
  );

/**
 * What makes leaders of a drawing hard to follow: two that cross or come so near that they look like one; one that passes so near to
 * another's name that it may be that one's; one that ends at no name, or as near to a second.
 */
export function leaderFaults(svg: string): string[] {
  const labels = labelsIn(svg);
  const led = leadersIn(svg).map((line) => {
    const [own, next] = [...labels].sort((a, b) => offMm(a, line[1]) - offMm(b, line[1]));
    const passed = labels.filter(
      (label) => label !== own && label.boxes.some((box) => segmentMeets(...line, box, 0.6)),
    );
    const off = own ? offMm(own, line[1]) : Infinity;
    return { line, own: own?.name ?? '', off, next: next ? offMm(next, line[1]) : Infinity, passed };
  });
  return led.flatMap(({ line, own, off, next, passed }, i) => [
    ...(off > 2.6 ? [`a leader ends ${off.toFixed(1)} mm from ${own}`] : []),
    ...(next - off < 0.3 ? [`the leader of ${own} ends as near to another name`] : []),
    ...passed.map(({ name }) => `the leader of ${own} passes ${name}`),
    ...led
      .slice(i + 1)
      .filter((other) => apartMm(line, other.line) < 0.9)
      .map(
        (other) => `leaders of ${own} and ${other.own} are ${apartMm(line, other.line).toFixed(1)} mm apart`,
      ),
  ]);
}

/** The straight lines of an SVG that are stroked, but for leaders and hatches. */
function strokedIn(svg: string): Line[] {
  const led = leadersIn(svg).map((line) => `${line}`);
  const paths = [...svg.matchAll(/<path d="([^"]*)"([^>]*)>/g)]
    .filter(([, , look]) => look!.includes('stroke="#000"') && !look!.includes('clip-path'))
    .flatMap(([, d]) => d!.split('M').slice(1));
  const lines = paths.flatMap((one) => {
    if (one.includes('A')) return [];
    const spots = one
      .replace('Z', '')
      .split('L')
      .map((spot) => spot.split(',').map(Number) as [number, number]);
    const ring = one.endsWith('Z') ? [...spots, spots[0]!] : spots;
    return ring.slice(1).map((spot, i): Line => [ring[i]!, spot]);
  });
  return lines.filter((line) => !led.includes(`${line}`));
}

/** Leaders that lie within a millimetre of a line of nearly their direction for more than two: an eye takes them for it. */
export function leadersAlong(svg: string): Line[] {
  const lines = strokedIn(svg);
  const [angle, step] = [14, 0.1];
  return leadersIn(svg).filter((leader) => {
    const [[x, y], [toX, toY]] = leader;
    const long = Math.hypot(toX - x, toY - y);
    const spots = Array.from({ length: Math.floor(long / step) }, (_, i): Spot => {
      const share = (i * step) / long;
      return [x + (toX - x) * share, y + (toY - y) * share];
    });
    return lines.some(([a, b]) => {
      const turn = Math.abs(Math.atan2(toY - y, toX - x) - Math.atan2(b[1] - a[1], b[0] - a[0])) % Math.PI;
      if ((Math.min(turn, Math.PI - turn) * 180) / Math.PI > angle) return false;
      const beside = spots.filter((spot) => apartMm([spot, spot], [a, b]) < 0.95);
      return beside.length * step > 4;
    });
  });
}
