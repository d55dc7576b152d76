import type { Job } from '../../job/Job.ts';
import {
  ASBESTOS_YEAR,
  asbestosLayers,
  isResilient,
  LEAD_YEAR,
  type Limit,
  mayHoldAsbestos,
  mayHoldLead,
  type Step,
} from '../../trade/index.ts';
import { limitOf } from './limitOf.ts';

/** Stops that follow from the age of the house: floor coverings that may hold asbestos, paint that may hold lead. */
export function houseLimits(job: Job): readonly Limit[] {
  const suspect = suspectLayers(job);
  const found = job.houseYear ?? 'unknown';
  const asbestos = limitOf(ASBESTOS_YEAR, {
    rule: 'house.asbestos',
    found,
    limit: ASBESTOS_YEAR.value,
    unit: 'year',
    pass: false,
    at: suspect,
    wouldPass: asbestosAsked(suspect),
  });
  const lead = limitOf(LEAD_YEAR, {
    rule: 'house.lead',
    found,
    limit: LEAD_YEAR.value,
    unit: 'year',
    pass: false,
    wouldPass: { code: 'limit.house.lead.pass', figures: {} },
  });
  return [...(asbestosAtWork(job) ? [asbestos] : []), ...(leadAtWork(job) ? [lead] : [])];
}

/** What is asked of an old floor: of layers that no word tells apart what they are, of none that is told what lies there at all. */
function asbestosAsked(suspect: readonly string[]): Step {
  const figures = { layers: suspect.join(', ') };
  if (suspect.length === 0) return { code: 'limit.house.asbestos.untold', figures: {} };
  return {
    code: suspect.some(isResilient) ? 'limit.house.asbestos.pass' : 'limit.house.asbestos.unnamed',
    figures,
  };
}

/** Layers of the old floor, removed or kept, that count as asbestos until tested. */
export function suspectLayers(job: Pick<Job, 'houseYear' | 'base'>): readonly string[] {
  return asbestosLayers(
    job.houseYear,
    [...job.base.removed, ...job.base.kept].map(({ name }) => name),
  );
}

/** Whether the old floor counts as asbestos: a layer of it does, or the job tells neither layers nor what lies below them. */
export function asbestosAtWork(job: Pick<Job, 'houseYear' | 'base'>): boolean {
  const { below, removed, kept } = job.base;
  const untold = below === 'unknown' && removed.length + kept.length === 0;
  return suspectLayers(job).length > 0 || (untold && mayHoldAsbestos(job.houseYear));
}

/** Whether painted wood that may hold lead is cut or taken off: jambs that are undercut, base, doors, casing. */
export function leadAtWork(job: Pick<Job, 'houseYear' | 'base' | 'surfaces'>): boolean {
  const undercut = job.surfaces.some(({ doorways }) =>
    doorways.some(({ left, right }) => left.kind === 'undercut' || right.kind === 'undercut'),
  );
  const offWall = job.base.comesOut.some(({ what }) => /base|door|casing|trim|jamb/i.test(what));
  return (undercut || offWall) && mayHoldLead(job.houseYear);
}
