import { hasToilet } from '../job/hasToilet.ts';
import type { Job } from '../job/Job.ts';
import { COLD, HEAT_AFTER, SOFT_JOINT_ORDER, sealingNeed, warmEnough } from '../trade/index.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { eveningBefore, morningAfter } from './daytime.ts';
import { type Minutes, toIso } from './localTime.ts';
import { heatOff, makeGroundwork } from './makeGroundwork.ts';
import { setZones, type ZoneTime } from './setZones.ts';
import { type Wait, type Waits, waitsOf } from './waits.ts';
import { endOfWork, nextDayStart, nextWorking, startInOneGo } from './workingTime.ts';

/** Work that puts something wet on the base. */
const WET: ReadonlySet<string> = new Set(['fill', 'layer', 'set']);

/**
 * The job on the clock: what comes before the first tile, set, grout, walk, soft joints, heavy use, seal, water and heat, as
 * local times in working hours.
 * Grouting starts as soon as what is left of a working day is long enough for it; zones are set in order, and where the only
 * way out leads over them each waits for the one before. The room is closed again while the sealer dries. Below 50 °F `doNotSet`
 * stands before the first patch, mortar or tile.
 */
export function makeCalendar(job: Job, zones: readonly ZoneTime[]): readonly CalendarEntry[] {
  const { work, access } = job;
  const waits = waitsOf(job);
  const over = zones.map((zone) => ({ ...zone, standsOnEarlier: zone.standsOnEarlier ?? access.onlyExit }));
  const ground = makeGroundwork(job, areaOf(job, zones));
  const set = setZones(over, ground.ready, waits.grout.hours, work);
  const ready = set.end + waits.grout.hours * 60;
  const tileSealed = sealTile(job, ready);
  const minutes = Math.round(job.products.grout.groutingHours * 60);
  const due = tileSealed?.dry ?? ready;
  const start = startInOneGo(due, minutes, work);
  const end = endOfWork(start, minutes, work);
  return [
    ...beforeGrout(job, [...ground.entries, ...set.entries], toIso(start)),
    ...(tileSealed ? [tileSealed.entry] : []),
    {
      code: 'grout',
      ...told(start, due, nextWorking(due, work) === due ? 'oneGo' : 'work'),
      to: toIso(end),
      ...(tileSealed ? cureOf(job) : waits.grout),
    },
    ...afterGrout(job, end, waits),
  ];
}

/** Old floor to last tile; what the cold and the floor's heating forbid stands before the first wet work. */
function beforeGrout(
  { work, base }: Job,
  entries: readonly CalendarEntry[],
  grout: string,
): readonly CalendarEntry[] {
  const at = entries.findIndex(({ code }) => WET.has(code));
  const dry = at < 0 ? entries : entries.slice(0, at);
  const first = entries[at]?.from ?? grout;
  const off = base.heated ? [heatOff(first)] : [];
  return [
    ...[...dry, ...off].sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0)),
    ...(warmEnough(work.tempC) ? [] : [doNotSet(first)]),
    ...entries.slice(dry.length),
  ];
}

/** Area of all zones in square metres; by the job's pace where a zone does not know its own. */
function areaOf({ work }: Job, zones: readonly ZoneTime[]): number {
  return zones.reduce((sum, { areaM2, hours }) => sum + (areaM2 ?? hours * work.paceM2PerHour), 0);
}

function doNotSet(from: string): CalendarEntry {
  return { code: 'doNotSet', from, source: COLD.source };
}

/** A time that is told, and the moment that it rests on where that is another one. */
function told(
  moment: Minutes,
  due: Minutes,
  moved: NonNullable<CalendarEntry['moved']>,
): Pick<CalendarEntry, 'from' | 'due' | 'moved'> {
  return { from: toIso(moment), ...(moment === due ? {} : { due: toIso(due), moved }) };
}

/** How long the sealer dries, by its own sheet or from memory. */
function cureOf({ products: { sealer } }: Job): Wait {
  return { hours: sealer.cureHours, source: sealer.stated.includes('cureHours') ? 'job' : 'memory' };
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
  const entry = { code: 'sealTile', ...told(start, ready, 'work'), ...waitsOf(job).grout };
  return { entry, dry: start + sealer.cureHours * 60 };
}

/** A time that falls at night, told for when people are up. */
function after(code: string, moment: Minutes, wait: Wait): CalendarEntry {
  return { code, ...told(morningAfter(moment), moment, 'night'), ...wait };
}

function afterGrout(job: Job, grouted: Minutes, waits: Waits): readonly CalendarEntry[] {
  const sealing = sealEntries(job, grouted, waits);
  const closed = sealing.find(({ code }) => code === 'sealerCures');
  const may = (code: string, wait: Wait) =>
    afterSealer(after(code, grouted + wait.hours * 60, wait), closed, grouted + wait.hours * 60);
  const heat = { hours: HEAT_AFTER.value.days * 24, source: HEAT_AFTER.source };
  const walked = grouted + waits.walk.hours * 60;
  const soft = { ...waits.walk, source: SOFT_JOINT_ORDER.source };
  const entries: CalendarEntry[] = [
    may('walk', waits.walk),
    { code: 'softJoints', ...told(nextWorking(walked, job.work), walked, 'work'), ...soft },
    ...weighing({ ...may('heavy', waits.heavy), ...(hasToilet(job) && { concerns: 'toilet' }) }, closed),
    ...sealing,
    { ...may('water', waits.water), ...(isWet(job) && { concerns: 'shower' }) },
    ...(job.base.heated ? [may('heat', heat)] : []),
  ];
  return entries.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
}

/** Whether one of the floors gets wet inside the house. */
function isWet({ surfaces }: Job): boolean {
  return surfaces.some(({ exposure }) => exposure === 'wet');
}

/**
 * When heavy things may stand on the tile. Where the room is closed again later, furniture goes back once, when the sealer is dry,
 * and is not carried out again.
 */
function weighing(heavy: CalendarEntry, closed: CalendarEntry | undefined): readonly CalendarEntry[] {
  if (closed?.to === undefined || heavy.from >= closed.to) return [heavy];
  const { hours = 0, source } = closed;
  return [
    { ...heavy, furniture: 'later' },
    { code: 'furniture', from: closed.to, hours, source },
  ];
}

/** What would be allowed while the sealer dries waits until it is dry. */
function afterSealer(entry: CalendarEntry, closed: CalendarEntry | undefined, due: Minutes): CalendarEntry {
  const dry = closed?.to;
  if (dry === undefined || entry.from < closed!.from || entry.from >= dry) return entry;
  return { ...entry, from: dry, due: toIso(due), moved: 'sealer' };
}

/**
 * When sealing may start and is to be done, the hours to book for it, and how long nobody walks there again until it is dry.
 * Sealing is reckoned to take as long as grouting; common practice, no source.
 */
function sealEntries(job: Job, grouted: Minutes, { sealFrom, sealTo }: Waits): readonly CalendarEntry[] {
  const { sealer, grout } = job.products;
  const needed = job.tiles.some((tile) => sealingNeed(tile.material, tile.glazed, grout.kind).grout);
  if (!needed || sealer.kind === 'none') return [];
  const from = grouted + sealFrom.hours * 60;
  const window = sealTo.hours > sealFrom.hours;
  const first = after('sealFrom', from, sealFrom);
  const latest = grouted + sealTo.hours * 60;
  const last = told(eveningBefore(latest), latest, 'evening');
  const day = nextDayStart(from, job.work);
  const end = endOfWork(day, Math.round(grout.groutingHours * 60), job.work);
  const dry = end + sealer.cureHours * 60;
  const comes = sealer.by === undefined ? {} : { who: sealer.by };
  // A window of our own that holds no working hours ends with the first of them; one of the product's sheet stays, and is told as missed.
  const late = window && end > latest;
  const own = late && sealTo.source !== 'job';
  return [
    first,
    ...(window && !own && last.from > first.from ? [{ code: 'sealTo', ...last, ...sealTo }] : []),
    {
      code: 'seal',
      ...told(day, from, late && !own ? 'missed' : 'work'),
      to: toIso(end),
      ...comes,
      ...sealFrom,
    },
    { code: 'sealerCures', from: toIso(day), to: toIso(morningAfter(dry)), ...cureOf(job) },
  ];
}
