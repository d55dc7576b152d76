import { hasShower } from '../job/hasShower.ts';
import { hasToilet } from '../job/hasToilet.ts';
import type { Job } from '../job/Job.ts';
import { isHeating } from '../materials/isHeating.ts';
import { COLD, HEAT_AFTER, SOFT_JOINT_ORDER, sealingNeed, warmEnough } from '../trade/index.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { type Minutes, toIso, toMinutes } from './localTime.ts';
import { heatOff, makeGroundwork } from './makeGroundwork.ts';
import { cureOf, sealEntries } from './sealEntries.ts';
import { setZones, type ZoneTime } from './setZones.ts';
import { told, toldByDay } from './told.ts';
import { type Wait, type Waits, waitsOf } from './waits.ts';
import { endOfWork, nextWorking, startInOneGo } from './workingTime.ts';

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

/** Old floor to last tile; what the cold and the floor's heating forbid stands before the first wet work. Heating that the job lays is not on before. */
function beforeGrout(
  { work, base }: Job,
  entries: readonly CalendarEntry[],
  grout: string,
): readonly CalendarEntry[] {
  const at = entries.findIndex(({ code }) => WET.has(code));
  const dry = at < 0 ? entries : entries.slice(0, at);
  const first = entries[at]?.from ?? grout;
  const off = base.heated && !base.fresh.some(isHeating) ? [heatOff(first)] : [];
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

/** Porous tile is sealed in one go before grouting, for as long as grouting takes, and dries as the sealer's sheet says. */
function sealTile(
  job: Job,
  ready: Minutes,
): { readonly entry: CalendarEntry; readonly dry: Minutes } | undefined {
  const { sealer, grout } = job.products;
  const porous = job.tiles.some((tile) => sealingNeed(tile.material, tile.glazed, grout.kind).beforeGrouting);
  if (!porous || sealer.kind === 'none') return undefined;
  const minutes = Math.round(grout.groutingHours * 60);
  const start = startInOneGo(ready, minutes, job.work);
  const end = endOfWork(start, minutes, job.work);
  const moved = nextWorking(ready, job.work) === ready ? 'oneGo' : 'work';
  const entry = {
    code: 'sealTile',
    ...told(start, ready, moved),
    to: toIso(end),
    ...waitsOf(job).grout,
  };
  return { entry, dry: end + cureOf(job).hours * 60 };
}

function afterGrout(job: Job, grouted: Minutes, waits: Waits): readonly CalendarEntry[] {
  const walked = grouted + waits.walk.hours * 60;
  const jointed = nextWorking(walked, job.work);
  const sealing = sealEntries(job, grouted, jointed, waits);
  const closed = sealing.find(({ code }) => code === 'sealerCures');
  const may = (code: string, wait: Wait) => {
    const due = grouted + wait.hours * 60;
    return afterSealer({ code, ...toldByDay(due), ...wait }, closed, due);
  };
  const heat = { hours: HEAT_AFTER.value.days * 24, source: HEAT_AFTER.source };
  const soft = { ...waits.walk, source: SOFT_JOINT_ORDER.source };
  const entries: CalendarEntry[] = [
    may('walk', waits.walk),
    { code: 'softJoints', ...told(jointed, walked, 'work'), ...soft },
    ...weighing(job, may('heavy', waits.heavy), closed),
    ...sealing,
    { ...may('water', waits.water), ...(isWet(job) && hasShower(job) && { concerns: 'shower' }) },
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
 * and is not carried out again; so does what is joined to water, unless whoever joins it has working hours on a day before.
 */
function weighing(
  job: Job,
  heavy: CalendarEntry,
  closed: CalendarEntry | undefined,
): readonly CalendarEntry[] {
  const toilet = hasToilet(job) ? ({ concerns: 'toilet' } as const) : {};
  if (closed?.to === undefined || heavy.from >= closed.to) return [{ ...heavy, ...toilet }];
  const { hours = 0, source } = closed;
  const back: CalendarEntry = { code: 'furniture', from: closed.to, hours, source };
  return nextWorking(toMinutes(heavy.from), job.work) < dayOf(closed.from)
    ? [{ ...heavy, ...toilet, furniture: 'later' }, back]
    : [
        { ...heavy, furniture: 'allLater' },
        { ...back, ...toilet },
      ];
}

/**
 * What would be allowed while the sealer dries waits until it is dry; and so does what would be allowed on the day on which the room
 * is closed again, as an hour of it serves nobody.
 */
function afterSealer(entry: CalendarEntry, closed: CalendarEntry | undefined, due: Minutes): CalendarEntry {
  const dry = closed?.to;
  if (dry === undefined || entry.from >= dry || toMinutes(entry.from) < dayOf(closed!.from)) return entry;
  return { ...entry, from: dry, due: toIso(due), moved: 'sealer' };
}

/** The midnight with which the day of a time begins. */
function dayOf(iso: string): Minutes {
  return toMinutes(iso.slice(0, 10));
}
