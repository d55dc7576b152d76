import { textWidth } from '../drawing/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** What the lines over the ticks of a zone say. */
export interface ZoneFacts {
  readonly set: string;
  readonly first: string;
  readonly last: string;
  /** The piece from which the part that the first shuts off is set. */
  readonly beyond?: string;
  readonly wayOut: string;
  /** Whether the floor has no doorway, which is then said. */
  readonly noWayOut: boolean;
  readonly mortar: string;
  readonly rate: string;
  /** Powder by the deeper notch, where the job sheet asks for one. */
  readonly deeper: string;
  readonly batches: number;
  /** Cuts at walls that no found space tells, wall by wall. */
  readonly unchecked: { readonly own: string; readonly second: string };
  readonly walks: readonly { readonly who: string; readonly from: string }[];
}

/** Type of the lines and of the second language on them, in points, and how much wider it is printed at most than it is set. */
const POINTS = 11.3;
const SECOND_POINTS = 8.5;
const WIDER = 1.04;
/** A line and what stands round each paragraph; a blank to fill in and a box to tick; what stands round all; in mm. */
const MM = { line: 5.3, round: 1.2, blank: 22, box: 6, all: 2.6 } as const;

/** What one paragraph says, in both languages, and the width of its blanks. */
interface FactLine {
  readonly own: readonly string[];
  readonly second: string;
  readonly blank: number;
}

/** How high the facts of a zone stand with the line under its ticks, in mm: as many lines as their words take on a page so wide. */
export function zoneFactsMm(context: SheetContext, facts: ZoneFacts, widthMm: number): number {
  const high = factLines(context, facts).map(({ own, second, blank }) => {
    const long = textWidth(own.join(' · '), POINTS) + textWidth(second, SECOND_POINTS) + blank;
    return Math.ceil((long * WIDER) / widthMm) * MM.line + MM.round;
  });
  return high.reduce((sum, one) => sum + one, MM.all);
}

function factLines({ say, second }: SheetContext, facts: ZoneFacts): readonly FactLine[] {
  const label = (key: string) => say(`sheet.zone.${key}`);
  const other = (...keys: string[]) => keys.map((key) => second?.say(`sheet.zone.${key}`) ?? '').join('  ');
  const batches = say('sheet.zone.batches', { count: facts.batches });
  const begin = facts.beyond === undefined ? 'first' : 'lineUp';
  const ends = [label('set'), facts.set, label(begin), facts.first, label('last'), facts.last];
  const beyond = (tongue: SheetContext['say']) =>
    facts.beyond === undefined ? '' : tongue('sheet.zone.beyond', { first: facts.first, far: facts.beyond });
  const none = (tongue: SheetContext['say']) => (facts.noWayOut ? tongue('sheet.zone.noWayOut') : '');
  return [
    {
      own: [...ends, facts.wayOut, none(say), ...(facts.beyond === undefined ? [] : [beyond(say)])],
      second: `${other('set', begin, 'last')}  ${second ? `${none(second.say)}  ${beyond(second.say)}` : ''}`,
      blank: 0,
    },
    {
      own: [label('mortar'), facts.mortar, facts.rate, facts.deeper, batches, label('water'), label('bag')],
      second: other('mortar', 'water'),
      blank: MM.blank,
    },
    {
      own: [label('walk'), ...facts.walks.flatMap(({ who, from }) => [who, from])],
      second: other('walk'),
      blank: facts.walks.length * MM.box,
    },
    { own: [label('before')], second: other('before'), blank: 0 },
    ...uncheckedLine({ say, second }, facts),
  ];
}

/** Which cuts have no space to be found; nothing where each has one. */
function uncheckedLine(
  { say, second }: Pick<SheetContext, 'say' | 'second'>,
  { unchecked }: ZoneFacts,
): readonly FactLine[] {
  if (unchecked.own === '') return [];
  const inSecond = second?.say('sheet.zone.unchecked', { cuts: unchecked.second }) ?? '';
  return [{ own: [say('sheet.zone.unchecked', { cuts: unchecked.own })], second: inSecond, blank: 0 }];
}
