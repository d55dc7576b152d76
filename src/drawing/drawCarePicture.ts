import { carePictures, plainCare } from './carePictures.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Mark } from './Mark.ts';
import { moveMarks } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { path } from './text.ts';

const side = 16;

/**
 * The small picture beside a line of the care sheet, by the line's code; what must not be done is struck through.
 */
export function drawCarePicture(code: string, options: Pick<DrawOptions, 'id' | 'label'>): Drawing {
  const strike: readonly Mark[] = code.includes('.dont.') ? [path([[0.5, 0.5], [13.5, 13.5]], 'factory')] : []; // biome-ignore format: two ends
  const marks = [...(carePictures[code] ?? plainCare), ...strike];
  return penSvg(moveMarks(marks, [1, 1]), { ...options, widthMm: side, heightMm: side, ratio: null });
}
