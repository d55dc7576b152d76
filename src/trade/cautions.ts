import type { Fact } from './Fact.ts';

const silica: Fact<string> = { value: 'caution.silica', mark: 'S', source: '29 CFR 1926.1153' };
const power: Fact<string> = { value: 'caution.power', mark: 'S', source: '29 CFR 1926.404(b)(1)' };
const asbestos: Fact<string> = { value: 'caution.asbestos', mark: 'S', source: '29 CFR 1926.1101' };
const lead: Fact<string> = { value: 'caution.lead', mark: 'M', source: 'EPA renovation rule' };
const tearing: Fact<string> = { value: 'caution.tearing', mark: 'S', source: '29 CFR 1926.1153' };
const cement: Fact<string> = { value: 'caution.cement', mark: 'S', source: 'OSHA' };
const epoxy: Fact<string> = { value: 'caution.epoxy', mark: 'P', source: 'practice' };
const saw: Fact<string> = { value: 'caution.saw', mark: 'P', source: 'practice' };
const knees: Fact<string> = { value: 'caution.knees', mark: 'H', source: 'NIOSH Alert 90-104' };
const lifting: Fact<string> = { value: 'caution.lifting', mark: 'P', source: 'practice' };
const edges: Fact<string> = { value: 'caution.edges', mark: 'P', source: 'practice' };
const strips: Fact<string> = { value: 'caution.strips', mark: 'P', source: 'practice' };
const licensed: Fact<string> = { value: 'caution.licensed', mark: 'P', source: 'practice' };

/** Permitted silica dust in the air over eight hours, and the level at which action begins, in µg/m³. */
export const SILICA_LIMIT: Fact<{ limit: number; action: number }> = {
  value: { limit: 50, action: 25 },
  mark: 'S',
  source: '29 CFR 1926.1153',
};

/**
 * Cautions for a job, the gravest first, as catalogue keys with their marks. What licensed trades do is always last.
 *
 * @param job.chips whether old tile or its mortar is torn off.
 * @param job.strips whether a floor comes up that is held by tack strip, nails or staples.
 * @example
 * cautionsFor({ asbestos: true, lead: false, epoxy: false, chips: false, strips: false })[0].value //=> 'caution.asbestos'
 */
export function cautionsFor(job: {
  readonly asbestos: boolean;
  readonly lead: boolean;
  readonly epoxy: boolean;
  readonly chips: boolean;
  readonly strips: boolean;
}): readonly Fact<string>[] {
  return [
    ...(job.asbestos ? [asbestos] : []),
    ...(job.lead ? [lead] : []),
    silica,
    ...(job.chips ? [tearing] : []),
    power,
    cement,
    ...(job.epoxy ? [epoxy] : []),
    saw,
    edges,
    ...(job.strips ? [strips] : []),
    knees,
    lifting,
    licensed,
  ];
}
