import type { Job } from '../job/Job.ts';
import { sealingNeed } from '../trade/index.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { eveningBefore, morningAfter } from './daytime.ts';
import { type Minutes, toIso } from './localTime.ts';
import { told, toldByDay } from './told.ts';
import { coldWait, type Wait, type Waits } from './waits.ts';
import { endOfWork, nextDayStart, startInOneGo, type WorkingHours } from './workingTime.ts';

/** From when and until when grout is sealed; without an end where the two are one moment. */
interface Window {
  readonly from: Minutes;
  readonly to: Minutes | undefined;
}

/**
 * When sealing may start and is to be done, the hours to book for it, and how long nobody walks there again until it is dry. Where
 * the window holds too few working hours sealing is booked after it, and says so. An owner's days are all of the week. Sealing is reckoned to take as long as grouting;
 * common practice, no source.
 *
 * @param grouted the end of grouting.
 * @param jointed when the soft joints are filled, before which nothing is sealed.
 */
export function sealEntries(
  job: Job,
  grouted: Minutes,
  jointed: Minutes,
  { sealFrom, sealTo }: Waits,
): readonly CalendarEntry[] {
  const { sealer, grout } = job.products;
  const needed = job.tiles.some((tile) => sealingNeed(tile.material, tile.glazed, grout.kind).grout);
  if (!needed || sealer.kind === 'none') return [];
  const from = grouted + sealFrom.hours * 60;
  const to = sealTo.hours > sealFrom.hours ? grouted + sealTo.hours * 60 : undefined;
  const { start, end } = sealingHours(job, to, Math.max(from, jointed));
  const comes = sealer.by === undefined ? {} : { who: sealer.by };
  const [begins, ends] = windowEntries({ from, to }, sealFrom, sealTo);
  const late = to !== undefined && end > to;
  return [
    begins,
    ...(ends ? [ends] : []),
    {
      code: 'seal',
      ...told(start, from, jointed > from ? 'softJoints' : 'work'),
      ...(late ? { due: toIso(from), moved: 'missed', latest: ends!.from } : {}),
      to: toIso(end),
      ...comes,
      ...sealFrom,
    },
    {
      code: 'sealerCures',
      from: toIso(start),
      to: toIso(morningAfter(end + cureOf(job).hours * 60)),
      ...cureOf(job),
    },
  ];
}

/** How long the sealer dries: by its own sheet, or from memory, longer in the cold as our other defaults. */
export function cureOf({ products: { sealer }, work }: Job): Wait {
  const hours = sealer.cureHours;
  return sealer.stated.includes('cureHours')
    ? { hours, source: 'job' }
    : coldWait(hours, 'memory', work.tempC);
}

/** Both ends of the window as people are told them; by the clock where all that it holds is night. */
function windowEntries({ from, to }: Window, sealFrom: Wait, sealTo: Wait): [CalendarEntry, CalendarEntry?] {
  const begins = { code: 'sealFrom', ...toldByDay(from), ...sealFrom };
  if (to === undefined) return [begins];
  const ends = { code: 'sealTo', ...told(eveningBefore(to), to, 'evening'), ...sealTo };
  if (begins.from < ends.from) return [begins, ends];
  return [
    { code: 'sealFrom', from: toIso(from), ...sealFrom },
    { code: 'sealTo', from: toIso(to), ...sealTo },
  ];
}

/** The first morning of who comes, or where that is too late the first hours in one go; where both are, the morning. */
function sealingHours(job: Job, to: Minutes | undefined, ready: Minutes) {
  const minutes = Math.round(job.products.grout.groutingHours * 60);
  const hours = hoursOf(job);
  const [morning, soon] = [nextDayStart(ready, hours), startInOneGo(ready, minutes, hours)].map((start) => ({
    start,
    end: endOfWork(start, minutes, hours),
  }));
  return [morning!, soon!].find(({ end }) => to === undefined || end <= to) ?? morning!;
}

/** Hours of who comes to seal: the crew's, but an owner lives there and seals on any day of the week; common practice, no source. */
function hoursOf({ products: { sealer }, work }: Job): WorkingHours {
  const isOwner = /^(?:the )?owner$/i.test(sealer.by?.trim() ?? '');
  return isOwner ? { ...work, days: EVERY_DAY, daysOff: [] } : work;
}

const EVERY_DAY = [1, 2, 3, 4, 5, 6, 7] as const;
