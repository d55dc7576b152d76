import type { BaseSpec, MoistureReading } from '../job/Job.ts';
import { readOnOld } from '../job/readOnOld.ts';

/** One question to the base: what is known of it and what follows; `open` where only the floor can tell. */
export interface BaseCheck {
  readonly what: 'film' | 'moisture';
  readonly state: 'pass' | 'fail' | 'open';
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}

/** Whether mortar can take hold of the base, and whether it is dry enough for the mortar's own sheet. Common practice. */
export function baseChecks(base: BaseSpec): readonly BaseCheck[] {
  return [filmCheck(base.film), moistureCheck(base.moisture)].map((check) => asRead(base, check));
}

/** What passes on a floor that comes up stays open: it is read again on the base under it. */
function asRead(base: BaseSpec, check: BaseCheck): BaseCheck {
  const layers = readOnOld(base);
  if (layers === undefined || check.state !== 'pass') return check;
  return { ...check, state: 'open', code: `base.${check.what}.again`, figures: { ...check.figures, layers } };
}

function filmCheck(film: BaseSpec['film']): BaseCheck {
  const check = (state: BaseCheck['state'], code: string): BaseCheck => ({
    what: 'film',
    state,
    code: `base.film.${code}`,
    figures: {},
  });
  if (film?.kind === 'paint') return check('fail', 'paint');
  if (film?.drop === 'stays') return check('fail', 'stays');
  if (film?.drop === 'soaks in') return check('pass', 'soaks');
  return check('open', film?.kind === 'curing' ? 'curing' : 'test');
}

/** How a reading was taken, as its unit tells. */
const METHODS = { '% CM': 'cm', '% MC': 'mc', '% RH': 'rh', lb: 'lb' } as const;

const told = ({ value, unit }: MoistureReading) => `${value} ${unit}`;

function moistureCheck(moisture: BaseSpec['moisture']): BaseCheck {
  if (!moisture) return { what: 'moisture', state: 'open', code: 'base.moisture.test', figures: {} };
  const { reads, on = '________', limit } = moisture;
  const figures = { reads: told(reads), on, method: METHODS[reads.unit] };
  if (!limit) return { what: 'moisture', state: 'open', code: 'base.moisture.noLimit', figures };
  const pass = reads.value <= limit.value;
  return {
    what: 'moisture',
    state: pass ? 'pass' : 'fail',
    code: `base.moisture.${pass ? 'dry' : 'wet'}`,
    figures: { ...figures, limit: told(limit) },
  };
}
