import { pointInRing } from '../geometry/index.ts';
import { type Notation, printLength, sawShare, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { axisEnds } from './axisEnds.ts';
import { type Box, boxOf, segmentMeets, within } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstApart } from './firstFree.ts';
import { isAslant } from './isAslant.ts';
import type { Mark, Spot } from './Mark.ts';
import type { NameRequest } from './nameBlock.ts';
import type { CutRange } from './rangeNear.ts';
import { direction, type Scale, toPaper } from './Scale.ts';
import { move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { sizes, text } from './text.ts';
import { textBox } from './textBox.ts';
import { textWidth } from './textWidth.ts';
import { wallEnds } from './wallEnds.ts';

/** Distance of the words from the wall, in mm of paper. */
const off = 4;
/** How far words may slide along the wall to find room, in mm. */
const slides = [0, 4, 8, 12, 18, 24, 32];
/** And past a doorway, whose words and line take the wall beside the chalk line. */
const farSlides = [42, 52, 62, 72];

interface EndCut {
  /** What is said of it: of the course on the line and the smallest of the others where there is room for both, else of the smaller one. */
  readonly words: string;
  readonly short: string;
  /** And without its share, where that is too long too. */
  readonly bare: string;
  /** Where the axis leaves the room, and the way it points there, in degrees on the paper. */
  readonly wall: Spot;
  readonly towards: number;
  /** Whether no chalk line leaves the room there, so that the words may stand on the middle. */
  readonly clear: boolean;
}

function ends(surface: PacketSurface, scale: Scale, print: EndCutPrint): readonly EndCut[] {
  const onAxes = axisEnds(surface);
  const all = [...onAxes, ...wallEnds(surface, onAxes)];
  return all.flatMap(({ of, turn, size, other, sizes, others, wall, edge }, i) => {
    if (isAslant(edge, direction(turn))) return [];
    const cuts = [
      { size, range: sizes },
      ...(other === undefined ? [] : [{ size: other, range: others }]),
    ].map((cut) => ({ ...cut, words: rangeWords(cut.size, cut.range, of, print) }));
    const least = cuts.reduce((a, b) => (b.size < a.size ? b : a));
    return {
      words: cuts.map(({ words }) => words).join(' / '),
      short: least.words,
      bare: bareWords(least.range ?? [least.size, least.size], of, print),
      wall: toPaper(scale, wall),
      towards: turn + scale.turn,
      clear: i >= onAxes.length,
    };
  });
}

function bareWords([narrow, wide]: CutRange, of: Ticks, print: EndCutPrint): string {
  const [least, most] = [narrow, wide].map((one) => sawShare(one, of, print.step).saw) as [Ticks, Ticks];
  if (most - least <= print.step) return printLength(least, print);
  return print.say('size.tapered', {
    narrow: printLength(least, print, { unit: false }),
    wide: printLength(most, print),
  });
}

/** One size, or where the cuts along a wall differ by more than the saw's step the narrowest and the widest. */
function rangeWords(size: Ticks, range: CutRange | undefined, of: Ticks, print: EndCutPrint): string {
  const [least, most] = (range ?? [size, size]).map((one) => sawShare(one, of, print.step));
  if (!least || !most || most.saw - least.saw <= print.step) return cutWords(size, of, print);
  return print.say('drawing.endCuts', {
    narrow: printLength(least.saw, print, { unit: false }),
    wide: printLength(most.saw, print),
    from: least.percent,
    to: most.percent,
  });
}

function cutWords(size: Ticks, of: Ticks, print: EndCutPrint): string {
  const { saw, percent } = sawShare(size, of, print.step);
  return print.say('drawing.endCut', { size: printLength(saw, print), percent });
}

/** How end cuts are put into words. */
export interface EndCutPrint extends Notation {
  readonly step: Ticks;
  readonly say: Say;
}

/** The pieces at the ends of both axes, and along the walls that no axis ends at, outside the wall they meet: size and share of a tile; of those that end in a box, if given. */
export function endCuts(
  surface: PacketSurface,
  scale: Scale,
  print: EndCutPrint,
  taken: Taken,
  box?: Box,
): { readonly marks: readonly Mark[]; readonly toLead: readonly NameRequest[] } {
  const all = ends(surface, scale, print).filter(({ wall }) => !box || within(boxOf([wall]), box));
  const level = surface.turn % 90 === 0;
  const outline = surface.outline.map((point) => toPaper(scale, point));
  const marks: Mark[] = [];
  for (const end of level ? all : []) {
    const around = { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] };
    const mark = [end.words, end.short, end.bare]
      .map((words) => beside(end, words, around, outline))
      .find((one) => one !== undefined);
    if (mark) marks.push(mark);
  }
  const toLead = level ? [] : all.map(({ short, wall }) => ({ name: short, rings: [], pole: wall }));
  return { marks, toLead };
}

/** Words along the wall, beside the chalk line that leaves the room at the same spot; none where a short wall has no place for them, for on the floor they would be taken for those of another wall. */
function beside(
  { wall, towards, clear }: EndCut,
  words: string,
  taken: Taken,
  outline: readonly Spot[],
): Mark | undefined {
  const [outX, outY] = direction(towards);
  const out = Math.atan2(outY, outX);
  const shift = textWidth(words, sizes.note) / 2 + 4;
  const places = [slides, farSlides].flatMap((some) =>
    [off, 2.25 * off].flatMap((away) =>
      some.flatMap((by) => [shift + by, -shift - by].map((along) => ({ away, along }))),
    ),
  );
  const middle = clear ? [off, 2.25 * off].map((away) => ({ away, along: 0 })) : [];
  const tries = [...middle, ...places].map(({ away, along }) =>
    text(move(move(wall, out, away), out - Math.PI / 2, along), words, { turn: outX === 0 ? 0 : 90 }),
  );
  return firstApart(
    tries.filter((one) => isOff(textBox(one), outline)),
    taken,
  );
}

/** Whether a box lies off a floor. */
function isOff(box: Box, outline: readonly Spot[]): boolean {
  const meets = outline.some((spot, i) => segmentMeets(spot, outline[(i + 1) % outline.length]!, box));
  return !meets && !pointInRing([(box.left + box.right) / 2, (box.bottom + box.top) / 2], outline);
}
