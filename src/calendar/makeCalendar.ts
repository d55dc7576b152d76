import type { Job } from '../job/Job.ts';
import { COLD, HEAT_AFTER, SOFT_JOINT_ORDER, sealingNeed, warmEnough } from '../trade/index.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { eveningBefore, morningAfter } from './daytime.ts';
import { type Minutes, toIso, toMinutes } from './localTime.ts';
import { setZones, type ZoneTime } from './setZones.ts';
import { type Wait, type Waits, waitsOf } from './waits.ts';
import { endOfWork, nextDayStart, nextWorking } from './workingTime.ts';

/**
 * The job on the clock: set, grout, walk, soft joints, heavy use, seal, water and heat, as local times in working hours.
 * Grouting starts with a working morning; zones are set in order, and where the only way out leads over them each waits
 * for the one before. Below 50 °F the first entry is `doNotSet`.
 */
export function makeCalendar(job: Job, zones: readonly ZoneTime[]): readonly CalendarEntry[] {
  const { work, access } = job;
  const waits = waitsOf(job);
  const over = zones.map((zone) => ({ ...zone, standsOnEarlier: zone.standsOnEarlier ?? access.onlyExit }));
  const set = setZones(over, toMinutes(work.from.slice(0, 10)), waits.grout.hours, work);
  const tileSealed = sealTile(job, set.end + waits.grout.hours * 60);
  const start = nextDayStart(tileSealed?.dry ?? set.end + waits.grout.hours * 60, work);
  const end = endOfWork(start, Math.round(job.products.grout.groutingHours * 60), work);
  return [
    ...(warmEnough(work.tempC) ? [] : [doNotSet(set.entries[0]?.from ?? toIso(start))]),
    ...set.entries,
    ...(tileSealed ? [tileSealed.entry] : []),
    { code: 'grout', from: toIso(start), to: toIso(end), ...waits.grout },
    ...afterGrout(job, end, waits),
  ];
}

function doNotSet(from: string): CalendarEntry {
  return { code: 'doNotSet', from, source: COLD.source };
}

/** Porous tile is sealed in the working hours before grouting, and dries as the sealer's sheet says. */
function sealTile(
  job: Job,
  ready: Minutes,
): { readonly entry: CalendarEntry; readonly dry: Minutes } | undefined {
  const { sealer, grout } = job.products;
  const porous = job.tiles.some((tile) => sealingNeed(tile.material, tile.glazed, grout.kind).beforeGrouting);
  if (!porous || sealer.kind === 'none') return undefined;
  const start = nextWorking(ready, job.work);
  const entry = { code: 'sealTile', from: toIso(start), hours: sealer.cureHours, source: 'job' };
  return { entry, dry: start + sealer.cureHours * 60 };
}

/** A time that falls at night, told for when people are up. */
function after(code: string, moment: Minutes, { hours, source }: Wait): CalendarEntry {
  return { code, from: toIso(morningAfter(moment)), hours, source };
}

function afterGrout(job: Job, grouted: Minutes, waits: Waits): readonly CalendarEntry[] {
  const may = (code: string, wait: Wait) => after(code, grouted + wait.hours * 60, wait);
  const heat = { hours: HEAT_AFTER.value.days * 24, source: HEAT_AFTER.source };
  const soft = toIso(nextWorking(grouted + waits.walk.hours * 60, job.work));
  const entries = [
    may('walk', waits.walk),
    { code: 'softJoints', from: soft, hours: waits.walk.hours, source: SOFT_JOINT_ORDER.source },
    may('heavy', waits.heavy),
    ...sealEntries(job, grouted, waits),
    may('water', waits.water),
    ...(job.base.heated ? [may('heat', heat)] : []),
  ];
  return entries.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
}

/** When sealing may start and is to be done, and the working day to book for it. */
function sealEntries(job: Job, grouted: Minutes, { sealFrom, sealTo }: Waits): readonly CalendarEntry[] {
  const { sealer, grout } = job.products;
  const needed = job.tiles.some((tile) => sealingNeed(tile.material, tile.glazed, grout.kind).grout);
  if (!needed || sealer.kind === 'none') return [];
  const from = grouted + sealFrom.hours * 60;
  const window = sealTo.hours > sealFrom.hours;
  const first = after('sealFrom', from, sealFrom);
  const last = toIso(eveningBefore(grouted + sealTo.hours * 60));
  return [
    first,
    ...(window && last > first.from ? [{ code: 'sealTo', from: last, ...sealTo }] : []),
    { code: 'seal', from: toIso(nextDayStart(from, job.work)), ...sealFrom },
  ];
}
