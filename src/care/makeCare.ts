import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import type { Job } from '../job/Job.ts';
import { asbestosAtWork, leadAtWork } from '../materials/limits/houseLimits.ts';
import { cautionsFor, comesUpAs, dropTestMonths, sealingNeed } from '../trade/index.ts';
import type { Care } from './Care.ts';
import { type CareFacts, dontsFor, dosFor, line } from './careLines.ts';
import { usedLines } from './usedLines.ts';

/**
 * What the owner is told: what needs a sealer, the dates of this job, five things to do and five not to do, cautions, and
 * what was used. Chosen by the job's tile, grout and sealer.
 */
export function makeCare(job: Job, calendar: readonly CalendarEntry[]): Care {
  const needs = job.tiles.map((tile) => sealingNeed(tile.material, tile.glazed, job.products.grout.kind));
  const grout = needs.some((need) => need.grout);
  const tile = needs.some((need) => need.tile);
  const sealing = (grout || tile) && job.products.sealer.kind !== 'none';
  const wet = job.surfaces.some(({ exposure }) => exposure === 'wet');
  const checkAgainMonths = dropTestMonths(wet);
  const dates = datesOf(calendar);
  const up = job.base.removed.map(({ name }) => comesUpAs(name));
  const acidSoft = job.tiles.some(({ material }) => material === 'stone' || material === 'cement');
  const facts: CareFacts = { job, wet, sealing, acidSoft, checkAgainMonths, dates };
  return {
    seal: {
      needed: grout || tile,
      what: [...(grout ? ['grout' as const] : []), ...(tile ? ['tile' as const] : [])],
      beforeGrouting: needs.some((need) => need.beforeGrouting),
    },
    dates: careDates(dates, sealing ? checkAgainMonths : undefined),
    dos: dosFor(facts),
    donts: dontsFor(facts),
    cautions: cautionsFor({
      asbestos: asbestosAtWork(job),
      lead: leadAtWork(job),
      epoxy: job.products.grout.kind === 'epoxy',
      chips: up.some(({ chips }) => chips),
      strips: up.some(({ strips }) => strips) || job.base.nailHoles !== undefined,
    }).map(({ value }) => line(value)),
    used: usedLines(job),
  };
}

function datesOf(calendar: readonly CalendarEntry[]) {
  const at = (code: string) => calendar.find((entry) => entry.code === code)?.from;
  const [sealFrom, sealTo, heat] = [at('sealFrom'), at('sealTo'), at('heat')];
  const cures = calendar.find((entry) => entry.code === 'sealerCures');
  const missed = calendar.find((entry) => entry.code === 'seal')?.latest;
  return {
    walk: at('walk') ?? '',
    heavy: at('heavy') ?? '',
    wet: at('water') ?? '',
    ...(sealFrom === undefined ? {} : { sealFrom }),
    ...(sealTo === undefined ? {} : { sealTo }),
    ...(cures?.to === undefined ? {} : { closedFrom: cures.from, closedTo: cures.to }),
    ...(missed === undefined ? {} : { sealMissed: missed }),
    ...(heat === undefined ? {} : { heat }),
  };
}

function careDates(dates: ReturnType<typeof datesOf>, months: number | undefined): Care['dates'] {
  const { heat: _, ...kept } = dates;
  return { ...kept, ...(months === undefined ? {} : { checkAgainMonths: months }) };
}
