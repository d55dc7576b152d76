import { corners, grow } from './boxes.ts';
import type { Drawing, Space } from './Drawing.ts';
import { escapeXml } from './escapeXml.ts';
import { drawnInSteps } from './inSteps.ts';
import type { Link } from './Link.ts';
import { type LineName, type LineStyle, lineStyles } from './lineStyles.ts';
import type { Mark } from './Mark.ts';
import { roundMm } from './roundMm.ts';
import { svgHatches } from './svgHatches.ts';
import { svgLinks } from './svgLinks.ts';
import { svgPath, svgRings } from './svgPath.ts';
import { svgFigure, svgText } from './svgText.ts';
import { textBox } from './textBox.ts';

/** What the pen writes round the marks. */
export interface Frame extends Space {
  readonly id: string;
  readonly label: string;
  readonly ratio: number | null;
  /** Parts that can be tapped; a drawing with links is no single picture to those who can't see it. */
  readonly links?: readonly Link[];
}

/** Millimetres of a CSS pixel. */
const mmPerPixel = 25.4 / 96;
/** Above this many marks, and where pieces can be tapped, the file is what counts: it must still open on a phone. */
const dense = 5000;
/** Hatches stay this far off words that are cleared, and lines this far where they are cleared too, in mm. */
const clearance = { hatch: 1, all: 0.3 } as const;

/**
 * The next size up that is a whole number of CSS pixels, in mm: a box that ends between two pixels is moved by the
 * browser, and the scale with it.
 *
 * @example wholePixels(25.3) //=> 25.4
 */
export function wholePixels(mm: number): number {
  return Math.ceil(mm / mmPerPixel - 1e-6) * mmPerPixel;
}

function stroke(name: LineName): string {
  const { width, dash, cap }: LineStyle = lineStyles[name];
  const dashes = dash ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return `stroke-width="${width}"${dashes}${cap ? ` stroke-linecap="${cap}"` : ''}`;
}

/** One path for all areas of a fill, white or black. */
function filled(marks: readonly Mark[], height: number, fill: 'paper' | 'ink'): string {
  const own = marks.filter((mark) => 'fill' in mark && mark.fill === fill);
  const d = own.map((mark) => svgPath(mark, height)).join('');
  return d === '' ? '' : `<path d="${d}" fill="${fill === 'paper' ? '#fff' : '#000'}"/>`;
}

function append<K>(lists: Map<K, string[]>, key: K, value: string): void {
  const list = lists.get(key) ?? [];
  list.push(value);
  lists.set(key, list);
}

/** One path for all lines of a name: black lines can't hide each other, and the file stays small. */
function lines(marks: readonly Mark[], height: number): string {
  const byName = new Map<LineName, string[]>();
  for (const mark of marks) if ('line' in mark && mark.line) append(byName, mark.line, svgPath(mark, height));
  return [...byName]
    .map(([name, paths]) => `<path d="${paths.join('')}" fill="none" stroke="#000" ${stroke(name)}/>`)
    .join('');
}

function words(mark: Mark, height: number): string {
  if (mark.mark === 'text') return svgText(mark, height);
  return mark.mark === 'figure' ? svgFigure(mark, height) : '';
}

/** Paper-white boxes round the words, as far off as each kind of mark has to stay. */
function cleared(marks: readonly Mark[], height: number, from: 'hatch' | 'all'): string {
  const rings = marks.flatMap((mark) => {
    if (mark.mark !== 'text' && mark.mark !== 'figure') return [];
    const clear = mark.mark === 'figure' ? 'hatch' : mark.clear;
    const wanted = from === 'hatch' ? clear !== 'none' : clear === 'all';
    return wanted ? [svgRings([corners(grow(textBox(mark), clearance[from]))], height)] : [];
  });
  return rings.length === 0 ? '' : `<path d="${rings.join('')}" fill="#fff"/>`;
}

/**
 * Writes marks as SVG: the only place where y is turned down, numbers are rounded and text is escaped. Hatches lie
 * lowest, then the paper cleared round words, then white fills, lines, white fills that lie over lines, black fills and words, each in the
 * order given.
 */
export function penSvg(marks: readonly Mark[], frame: Frame): Drawing {
  const isOver = (mark: Mark) => mark.mark === 'area' && mark.over === true;
  const [over, under] = [marks.filter(isOver), marks.filter((mark) => !isOver(mark))];
  const [widthMm, heightMm] = [wholePixels(frame.widthMm), wholePixels(frame.heightMm)];
  const id = frame.id.replace(/[^A-Za-z0-9-]/g, '-');
  const written =
    svgHatches(marks, heightMm, id) +
    cleared(marks, heightMm, 'hatch') +
    filled(under, heightMm, 'paper') +
    lines(under, heightMm) +
    cleared(marks, heightMm, 'all') +
    filled(over, heightMm, 'paper') +
    lines(over, heightMm) +
    filled(marks, heightMm, 'ink') +
    marks.map((mark) => words(mark, heightMm)).join('') +
    svgLinks(frame.links ?? [], heightMm);
  const isShort = marks.length > dense || frame.links !== undefined;
  const body = isShort ? drawnInSteps(written) : written;
  const [width, height] = [roundMm(widthMm), roundMm(heightMm)];
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"` +
    ` role="${frame.links ? 'group' : 'img'}" aria-label="${escapeXml(frame.label)}" font-family="'Atkinson Hyperlegible Next', sans-serif"` +
    ` style="font-variant-numeric: tabular-nums">${body}</svg>`;
  return { svg, widthMm, heightMm, ratio: frame.ratio };
}
