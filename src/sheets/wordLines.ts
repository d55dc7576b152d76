import { textWidth } from '../drawing/index.ts';

/**
 * On how many lines words stand that go on to a further one at their spaces only: a word that is longer than a line has one for itself.
 * Type in points, the width of a line in mm.
 *
 * @example wordLines('hall', 10, 30) //=> 1
 * @example wordLines('antechamber of the servants', 9, 26.5) //=> 2
 */
export function wordLines(words: string, points: number, widthMm: number): number {
  const space = textWidth(' ', points);
  let [lines, long] = [1, 0];
  for (const word of words.split(' ')) {
    const wide = textWidth(word, points);
    if (long > 0 && long + space + wide > widthMm) [lines, long] = [lines + 1, wide];
    else long += (long > 0 ? space : 0) + wide;
  }
  return lines;
}
