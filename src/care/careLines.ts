import { hasShower } from '../job/hasShower.ts';
import type { Job } from '../job/Job.ts';
import type { CareLine } from './Care.ts';

/** What the rules of care look at. Dates are ISO local times. */
export interface CareFacts {
  readonly job: Job;
  readonly wet: boolean;
  readonly sealing: boolean;
  readonly acidSoft: boolean;
  readonly checkAgainMonths: number;
  readonly dates: {
    readonly wet: string;
    readonly walk: string;
    readonly sealFrom?: string;
    readonly heat?: string;
  };
}

const ENOUGH = 5;

/** Five things to do, those that the job asks for first. */
export function dosFor({ job, wet, sealing, checkAgainMonths, dates }: CareFacts): readonly CareLine[] {
  return [
    line('care.do.firstWash', { date: dates.wet }),
    line('care.do.neutral'),
    ...(sealing ? [line('care.do.dropTest', { checkMonths: checkAgainMonths })] : []),
    line(wet ? (hasShower(job) ? 'care.do.squeegee' : 'care.do.standing') : 'care.do.wipe'),
    line('care.do.corners'),
    line('care.do.grit'),
  ].slice(0, ENOUGH);
}

/** Five things not to do, those that do the most harm first. Acid is never allowed. */
export function dontsFor({ job, sealing, acidSoft, dates }: CareFacts): readonly CareLine[] {
  const epoxy = job.products.grout.kind === 'epoxy';
  return [
    line(`care.dont.acid${acidSoft ? 'Stone' : ''}${epoxy ? 'Epoxy' : ''}`),
    ...(sealing && dates.sealFrom ? [line('care.dont.sealEarly', { date: dates.sealFrom })] : []),
    ...(job.base.heated && dates.heat ? [line('care.dont.heat', { date: dates.heat })] : []),
    line('care.dont.wax'),
    line('care.dont.abrasive'),
    line(isShowerFloor(job) ? 'care.dont.drop' : 'care.dont.drag'),
    line(epoxy ? 'care.dont.oldGroutEpoxy' : 'care.dont.oldGrout'),
  ].slice(0, ENOUGH);
}

/** Whether all that is tiled is the floor of a shower, on which no furniture stands. */
function isShowerFloor({ surfaces }: Job): boolean {
  return surfaces.every(
    ({ exposure, obstacles }) => exposure === 'wet' && obstacles.some(({ meets }) => meets === 'drain'),
  );
}

/** A sentence of the care sheet. */
export function line(code: string, figures: CareLine['figures'] = {}): CareLine {
  return { code, figures };
}
