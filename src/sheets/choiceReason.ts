import type { SheetContext } from './SheetContext.ts';

/** What is told of one of two layouts beside the other one, as printed there. */
export interface ChoiceFigures {
  /** Of the narrowest tile in sight: its share of a tile, and its size as printed. */
  readonly share: number;
  readonly narrowest: string;
  readonly small: number;
  readonly cut: number;
  readonly pieces: number;
  readonly buy: number;
  /** Boxes to buy of each tile; 0 where nobody knows what a box holds. */
  readonly boxes: readonly number[];
  /** Whether a border runs round both, which no figure of a layout counts. */
  readonly border: boolean;
}

const SAID = ['narrowest', 'small', 'cut', 'pieces', 'buy'] as const;

/** A share below this is one to the eye, as where neither layout is advised. */
const ALIKE = 0.005;

/**
 * Why the first of two layouts is advised, in the figures told beside it, and in what the other one is better; empty where the first is
 * better in nothing.
 */
export function choiceReason(
  { say, lang }: Pick<SheetContext, 'say' | 'lang'>,
  own: ChoiceFigures,
  other: ChoiceFigures,
): string {
  const ways = (one: ChoiceFigures, than: ChoiceFigures) =>
    SAID.filter((what) => isBetter(what, one, than)).map((what) =>
      say(`sheet.choice-sheet.better.${what}`, {
        one: one[what],
        two: than[what],
        border: own.border ? 'yes' : 'no',
      }),
    );
  const listed = (told: readonly string[]) => new Intl.ListFormat(lang, { type: 'conjunction' }).format(told);
  const [reasons, against] = [ways(own, other), ways(other, own)];
  if (reasons.length === 0) return '';
  return say('sheet.choice-sheet.reason', {
    reasons: listed(reasons),
    against: against.length > 0 ? listed(against) : 'none',
  });
}

function isBetter(what: (typeof SAID)[number], one: ChoiceFigures, than: ChoiceFigures): boolean {
  if (what === 'narrowest') return one.share > than.share + ALIKE && one.narrowest !== than.narrowest;
  return one[what] < than[what] && !(what === 'buy' && isSameBoxes(one, than));
}

/** Fewer tiles are no saving where they come in as many boxes. */
function isSameBoxes(one: ChoiceFigures, than: ChoiceFigures): boolean {
  return one.boxes.every((count, i) => count > 0 && count === than.boxes[i]);
}
