import { drawBase, drawCheckBars, textWidth } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { baseFlatness } from './baseFlatness.ts';
import { bothGates } from './bothGates.ts';
import { bothTongues } from './bothTongues.ts';
import { carriedAnswers, carriedText } from './carriedText.ts';
import { checkText } from './checkText.ts';
import { comesAndGoes } from './comesAndGoes.ts';
import { drawingSpace, pageSpace } from './drawingSpace.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Is the base ready for tile? Stops, what comes up and goes back, what was found on it, how flat it is. */
export const baseSheet: Sheet = {
  name: 'base-sheet',
  for: 'setter',
  bundles: ['crew', 'office', 'packet'],
  speaks: 'crew',
  make: (context) =>
    context.packet.surfaces
      .filter((surface) => surface.kind === 'floor')
      .map((surface, i) => basePage(context, surface, i)),
};

/** Heights in mm of what stands round the drawing, and the least that a drawing is given where all that fills a page. */
const MM = {
  stop: 11,
  secondStop: 7,
  row: 7.3,
  head: 8,
  goes: 6.1,
  key: 14,
  note: 13,
  answer: 5,
  line: 3.6,
} as const;
const DRAWING_LEAST_MM = 56;

/** What the lists of a page want, in mm, so that a floor stands on one page in the largest scale that leaves them room. */
function listsMm(rows: { stops: number; found: number; flat: number; goes: number }): number {
  const table = (count: number, mm: number) => (count > 0 ? MM.head + count * mm : 0);
  const lists = table(rows.found, MM.row) + table(rows.flat, MM.row) + table(rows.goes, MM.goes);
  return rows.stops * MM.stop + MM.key + lists + MM.note;
}

/** What a check says stands in a column so wide in mm, at so many points; words wrap at spaces, which takes a little more. */
const CHECK = { mm: 96, points: 9, wraps: 1.08, lines: 2 } as const;

/** The lines that a check takes over the two that a row has room for. */
function linesMore(text: string): number {
  return Math.max(0, Math.ceil((textWidth(text, CHECK.points) * CHECK.wraps) / CHECK.mm) - CHECK.lines);
}

/** The type of the caution at the foot in each language, in points, and what stands before and beside it on the page, in mm. */
const NOTE = { points: [9, 7.2], besideMm: 5 } as const;

/** The lines of the caution at the foot. */
function noteLines({ first, second }: { first: string; second: string }, paper: 'letter' | 'a4'): number {
  const [own, other] = NOTE.points;
  const { widthMm } = pageSpace(paper, 'portrait');
  const long = (textWidth(first, own) + textWidth(second, other)) * CHECK.wraps;
  return Math.ceil(long / (widthMm - NOTE.besideMm));
}

/** As many rows stand beside the check bar, under a drawing that is lower than the bar; more may run on to the next page. */
const MOST_BESIDE = 8;

/** Width of the key where it stands beside the drawing, in mm. */
const KEY_MM = 46;

function basePage(context: SheetContext, surface: PacketSurface, i: number): SheetPage {
  const { packet, say, units } = context;
  const { system, paper } = packet.spec.print;
  const found = foundRows(context, surface, i === 0);
  const house = i === 0 ? ofTheHouse(context) : { stops: [], goes: [], checks: [] };
  const flat = baseFlatness(context, surface);
  const wanted = listsMm({
    stops: house.stops.length,
    found: found.length + 1 + house.checks.length,
    flat: flat.spots.length + flat.fill.length + 1,
    goes: house.goes.length,
  });
  const answers = found.flatMap((row) => row.answers ?? []).length;
  const sealed = house.goes.filter((row) => row.sealed).length;
  const more = house.checks.reduce((sum, { text }) => sum + linesMore(text), 0) + (context.second ? 1 : 0);
  const twice = house.stops.filter(({ second }) => second !== '').length;
  const note = bothTongues(context, 'sheet.base-sheet.note');
  const noteMore = noteLines(note, paper) - 1;
  const besides = answers * MM.answer + (sealed + more + noteMore) * MM.line + twice * MM.secondStop;
  const space = drawingSpace(paper, 'portrait', wanted + besides);
  const drawing = drawBase(surface, {
    id: `base-${i + 1}`,
    label: say('sheet.base-sheet.drawing', { name: surface.name }),
    ...units,
    say,
    space: { ...space, heightMm: Math.max(space.heightMm, DRAWING_LEAST_MM) },
  });
  return {
    floor: surface.name,
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      drawing: drawing.svg,
      bars: drawCheckBars({ id: `base-bars-${i + 1}`, label: say('drawing.bars'), ...units, say }).svg,
      marks: marksDrawn(surface),
      units: surface.base?.readings.length ? say(`sheet.base-sheet.readings.${system}`) : '',
      found,
      aside: drawing.widthMm + KEY_MM <= space.widthMm,
      beside: found.length <= MOST_BESIDE,
      ...house,
      ...flat,
      note,
    },
  };
}

/** What is drawn on the base, so that the key tells that and no more. */
function marksDrawn({ base, flatness }: PacketSurface): readonly string[] {
  const cracks = base?.cracks ?? [];
  const drawn = {
    carried: (base?.joints ?? []).length > 0 || cracks.some(({ moving }) => moving),
    still: cracks.some(({ moving }) => !moving),
    hollow: (base?.hollow ?? []).length > 0,
    ring: (flatness?.under ?? []).some(({ worst, pass }) => worst && !pass),
  };
  return Object.entries(drawn).flatMap(([mark, is]) => (is ? [mark] : []));
}

function ofTheHouse(context: SheetContext) {
  const { packet, say, second } = context;
  return {
    stops: bothGates(context).filter(({ stop }) => stop),
    goes: comesAndGoes(context),
    checks: (packet.baseChecks ?? []).map(({ what, state, ...check }) => ({
      what: say(`sheet.base-sheet.${what}`),
      second: second?.say(`sheet.base-sheet.${what}`) ?? '',
      text: checkText(context, check),
      state: state === 'open' ? '' : say(`limit.${state}`),
      failed: state === 'fail',
    })),
  };
}

interface FoundRow {
  /** Its number on the drawing; empty where the job does not say where it lies. */
  readonly number: string;
  readonly where: string;
  readonly text: string;
  /** What may be decided there, each to be ticked, and who decides; none where nothing is left to decide. */
  readonly answers?: readonly string[];
  readonly decides?: string;
}

/** Cracks, hollow spots and joints in the order of their numbers on the drawing, then what has no place, then nail holes. */
function foundRows(context: SheetContext, surface: PacketSurface, first: boolean): readonly FoundRow[] {
  const { packet, say, longLength } = context;
  const { base } = packet;
  const here = surface.base;
  const crack = (moving: boolean) => say(`sheet.base-sheet.crack.${moving ? 'moving' : 'still'}`);
  const hollow = (across: number | undefined) =>
    say('sheet.base-sheet.hollow', { across: across === undefined ? '________' : longLength(across) });
  const placed = [
    ...(here?.cracks ?? []).map(({ where, moving }) => ({ where, text: crack(moving) })),
    ...(here?.hollow ?? []).map(({ where, across }) => ({ where, text: hollow(across) })),
    ...(here?.joints ?? []).map(({ wall, distance }) => ({
      where: say('sheet.base-sheet.jointAt', { distance: longLength(distance), wall }),
      text: say('sheet.base-sheet.joint'),
    })),
  ].map((row, i) => ({
    number: `${i + 1}`,
    where: row.where,
    ...carriedRow(context, surface, i + 1, row.text),
  }));
  const loose = [
    ...base.cracks.filter(({ line }) => !line).map(({ where, moving }) => ({ where, text: crack(moving) })),
    ...(base.hollow ?? [])
      .filter(({ at }) => !at)
      .map(({ where, across }) => ({ where, text: hollow(across) })),
    ...(base.nailHoles === undefined ? [] : [{ where: base.nailHoles, text: say('sheet.base-sheet.nails') }]),
  ].map((row) => ({ number: '', ...row }));
  return first ? [...placed, ...loose] : placed;
}

/** What is asked of a row of the base: where no tile joint lies over what moves there, the question stands instead of the advice. */
function carriedRow(
  context: SheetContext,
  surface: PacketSurface,
  number: number,
  text: string,
): Pick<FoundRow, 'text' | 'answers' | 'decides'> {
  const carried = carriedText(context, surface, number);
  const answers = carriedAnswers(context, surface, number);
  if (answers.length === 0) return { text: [text, carried].filter(Boolean).join(' ') };
  return { text: carried, answers, decides: context.say('sheet.base-sheet.carried.decides') };
}
