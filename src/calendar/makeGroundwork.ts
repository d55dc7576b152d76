import type { Job } from '../job/Job.ts';
import { toiletForgotten } from '../job/toiletForgotten.ts';
import { isFilled } from '../materials/isFilled.ts';
import { isCast, isSpread, layersUnder } from '../materials/layersUnder.ts';
import { leadAtWork, suspectLayers } from '../materials/limits/houseLimits.ts';
import { HEAT_OFF, LABORATORY_WAIT, PREPARING_PACE, PREPARING_WAIT, TAKE_OUT } from '../trade/index.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { eveningBefore, morningAfter } from './daytime.ts';
import { DAY, type Minutes, toIso, toMinutes } from './localTime.ts';
import { quarterHours } from './setZones.ts';
import { coldWait, type Wait } from './waits.ts';
import { endOfWork, nextDayStart, startInOneGo } from './workingTime.ts';

/** What is done before the first tile, and the moment from which that may be set. */
export interface Groundwork {
  readonly entries: readonly CalendarEntry[];
  readonly ready: Minutes;
}

/** One step after another: its entry, and the one for the time in which it is left alone. */
interface Step {
  readonly entry: Pick<CalendarEntry, 'code' | 'source'> & Partial<CalendarEntry>;
  readonly hours: number;
  readonly cures?: { readonly code: string; readonly wait: Wait };
}

/**
 * What comes before the first tile, in the order of the work: the laboratory's answer, what comes out, the old floor, patch or
 * leveler, each new layer under the tile's bed, and how long each is left alone. The first day of the job is the day of the
 * first step; a sample is sent so long before it that the answer is there, and where the job was issued too late for that, the
 * work waits for the answer.
 *
 * @param areaM2 area of all zones in square metres.
 */
export function makeGroundwork(job: Job, areaM2: number): Groundwork {
  const from = toMinutes(job.work.from.slice(0, 10));
  const tested = laboratory(job, from);
  const entries: CalendarEntry[] = [...(tested ? [tested.entry] : [])];
  let moment = tested ? Math.max(from, tested.answered) : from;
  for (const { entry, hours, cures } of stepsOf(job, areaM2)) {
    const minutes = quarterHours(hours);
    const start = startInOneGo(moment, minutes, job.work);
    moment = endOfWork(start, minutes, job.work);
    entries.push({
      ...entry,
      from: toIso(start),
      to: toIso(moment),
      hours: Math.round(hours * 10_000) / 10_000,
    });
    if (!cures || cures.wait.hours === 0) continue;
    const { code, wait } = cures;
    const end = moment + wait.hours * 60;
    entries.push({
      code,
      from: toIso(moment),
      to: toIso(morningAfter(end)),
      ...(entry.things ? { things: entry.things } : {}),
      ...(morningAfter(end) === end ? {} : { due: toIso(end), moved: 'night' as const }),
      ...wait,
    });
    moment = end;
  }
  return { entries, ready: moment };
}

/**
 * The floor's heating is off before anything wet touches the base, so that the base is cold by then.
 *
 * @param first the first patch, layer or tile, an ISO local time.
 */
export function heatOff(first: string): CalendarEntry {
  const due = toMinutes(first) - HEAT_OFF.value * 60;
  const from = eveningBefore(due);
  return {
    code: 'heatOff',
    from: toIso(from),
    hours: HEAT_OFF.value,
    source: HEAT_OFF.source,
    ...(from === due ? {} : { due: toIso(due), moved: 'evening' }),
  };
}

function stepsOf(job: Job, areaM2: number): readonly Step[] {
  const { base, work } = job;
  const pace = PREPARING_PACE.value;
  const paced = (code: string, area: number, paceM2PerHour: number, things?: readonly string[]): Step => ({
    entry: {
      code,
      source: PREPARING_PACE.source,
      areaM2: area,
      paceM2PerHour,
      ...(things ? { things } : {}),
    },
    hours: area / paceM2PerHour,
  });
  const waits = (stated: number | undefined, hours: number): Wait =>
    stated === undefined
      ? { ...coldWait(hours, PREPARING_WAIT.source, work.tempC), source: 'sheetFirst' }
      : { hours: stated, source: 'job' };
  const liftOf = (step: Step): Step =>
    suspectLayers(job).length > 0 ? { ...step, entry: { ...step.entry, concerns: 'laboratory' } } : step;
  const out = outOf(job);
  const old = base.removed.map(({ name }) => name);
  return [
    ...(out.length > 0
      ? [{ entry: { code: 'comesOut', source: TAKE_OUT.source, things: out }, hours: TAKE_OUT.value }]
      : []),
    ...(old.length > 0 ? [liftOf(paced('lift', areaM2 * old.length, pace.lift, old))] : []),
    ...(isFilled(job)
      ? [
          {
            ...paced('fill', areaM2, pace.fill),
            cures: { code: 'fillCures', wait: waits(base.fillWaitHours, PREPARING_WAIT.value.fill) },
          },
        ]
      : []),
    ...laidUnder(job).map((layer) => ({
      ...paced('layer', areaM2, pace.layer, [layer.name]),
      cures: { code: 'layerCures', wait: waits(layer.waitHours, PREPARING_WAIT.value.layer) },
    })),
  ];
}

/** What is taken out: what the job names, and a toilet on a flange of the job even where the job forgot it. */
function outOf(job: Job): readonly string[] {
  const named = job.base.comesOut.map(({ what }) => what);
  return toiletForgotten(job) ? [...named, 'toilet'] : named;
}

/** Layers that take a working step of their own: a bond coat goes with the board or membrane on it, and stands alone without one. */
function laidUnder({ base }: Job) {
  const under = layersUnder(base);
  const laid = under.filter((layer) => isCast(layer) || !isSpread(layer));
  return laid.length > 0 ? laid : under;
}

/** The sample and its answer; undefined where nothing in the job is suspect. */
function laboratory(
  job: Job,
  first: Minutes,
): { readonly entry: CalendarEntry; readonly answered: Minutes } | undefined {
  const things = [...suspectLayers(job), ...(leadAtWork(job) ? ['paint'] : [])];
  if (things.length === 0) return undefined;
  const { laboratoryHours } = job.base;
  const hours = laboratoryHours ?? LABORATORY_WAIT.value;
  const issued = nextDayStart(toMinutes(job.revision.date.slice(0, 10)), job.work);
  const sampled = Math.max(issued, lastDayStart(nextDayStart(first, job.work) - hours * 60, job));
  const answered = sampled + hours * 60;
  const source = laboratoryHours === undefined ? LABORATORY_WAIT.source : 'job';
  return {
    entry: { code: 'laboratory', from: toIso(sampled), to: toIso(answered), things, hours, source },
    answered,
  };
}

/** Start of the last working day that begins at or before a moment. */
function lastDayStart(moment: Minutes, { work }: Job): Minutes {
  let day = Math.floor(moment / DAY) * DAY;
  while (nextDayStart(day, work) > moment) day -= DAY;
  return nextDayStart(day, work);
}
