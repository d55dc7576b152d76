import { getDocument } from '../../support/pdfLibrary.ts';

/** A page in black and white: 1 is ink. */
export interface Ink {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

interface CanvasFactory {
  create(
    width: number,
    height: number,
  ): {
    readonly canvas: never;
    readonly context: {
      getImageData(x: number, y: number, w: number, h: number): { data: Uint8ClampedArray };
    };
  };
}

/** Each dot is looked at as this many by this many finer ones. */
const finer = 4;

/** The first page of a PDF as a printer without greys puts it down: what is at least half covered is a dot of ink. */
export async function printedInk(bytes: Uint8Array, dotsPerInch: number): Promise<Ink> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const page = await pdf.getPage(1);
  const viewport = page.getViewport({ scale: (finer * dotsPerInch) / 72 });
  const [width, height] = [viewport.width, viewport.height].map((side) => Math.floor(side / finer)) as [
    number,
    number,
  ];
  const { canvas, context } = (pdf.canvasFactory as CanvasFactory).create(width * finer, height * finer);
  await page.render({ canvas, canvasContext: context as never, viewport, background: '#fff' }).promise;
  const { data } = context.getImageData(0, 0, width * finer, height * finer);
  await pdf.destroy();
  const dots = new Uint8Array(width * height);
  for (let i = 0; i < dots.length; i++) {
    let white = 0;
    for (let k = 0; k < finer * finer; k++) {
      const x = (i % width) * finer + (k % finer);
      const y = Math.floor(i / width) * finer + Math.floor(k / finer);
      white += data[4 * (y * width * finer + x)]!;
    }
    dots[i] = Number(white / finer ** 2 < 128);
  }
  return { width, height, dots };
}

/** A part of a page, in dots from its upper left. */
export interface Patch {
  readonly left: number;
  readonly top: number;
  readonly side: number;
}

const at = ({ width, dots }: Ink, x: number, y: number): number => dots[y * width + x] ?? 0;

/** Share of a patch that is ink. */
export function inkShare(ink: Ink, { left, top, side }: Patch): number {
  let sum = 0;
  for (let y = top; y < top + side; y++) for (let x = left; x < left + side; x++) sum += at(ink, x, y);
  return sum / side ** 2;
}

/** Share of a patch's ink that has ink a step further in a direction too: 1 along a line, the share of ink across it. */
export function inkAlong(ink: Ink, { left, top, side }: Patch, [dx, dy]: readonly [number, number]): number {
  let [all, again] = [0, 0];
  for (let y = top; y < top + side; y++)
    for (let x = left; x < left + side; x++)
      if (at(ink, x, y)) {
        all += 1;
        // One dot to either side: a line on a raster has steps.
        again += Math.max(...[-1, 0, 1].map((by) => at(ink, x + dx + by, y + dy)));
      }
  return all === 0 ? 0 : again / all;
}
