import { describe, expect, test } from 'vitest';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import type { Job } from '../../src/job/Job.ts';
import { JOB, withTile } from '../materials/plainJob.ts';

/** Seven hours from Monday 2026-11-30 08:00: the last tile is set at 15:00. */
const MONDAY = [{ number: 1, hours: 7 }];

const grouted = (change: Partial<Job['products']['grout']>): Job => ({
  ...JOB,
  products: { ...JOB.products, grout: { ...JOB.products.grout, ...change } },
});
const times = (job: Job, zones: Parameters<typeof makeCalendar>[1] = MONDAY) => {
  const entries = makeCalendar(job, zones);
  return (code: string) => entries.filter((entry) => entry.code === code).map(({ from }) => from);
};

describe('last tile Monday 15:00, mortar 24 h, grouting a morning of three hours (common practice, no source)', () => {
  const product = times(
    grouted({ sealAfterHours: [72, 120], waterHours: 144, stated: ['sealAfterHours', 'waterHours'] }),
  );
  const ours = times(JOB);

  test.each([
    ['grout', '2026-12-02T08:00'],
    ['walk', '2026-12-03T11:00'],
    ['heavy', '2026-12-05T11:00'],
  ])('%s at %s, with or without a product sheet', (code, from) => {
    expect([product(code), ours(code)]).toEqual([[from], [from]]);
  });

  test('grouting ends at 11:00', () => {
    expect(makeCalendar(JOB, MONDAY).find(({ code }) => code === 'grout')?.to).toBe('2026-12-02T11:00');
  });

  test.each([
    ['sealFrom', '2026-12-05T11:00', '2026-12-06T11:00'],
    ['seal', '2026-12-07T08:00', '2026-12-07T08:00'],
    ['water', '2026-12-08T11:00', '2026-12-09T11:00'],
  ])('%s by the product sheet at %s, by our default at %s', (code, byProduct, byDefault) => {
    expect([product(code), ours(code)]).toEqual([[byProduct], [byDefault]]);
  });

  test('by our default sealing ends on Tuesday 8 December 11:00', () => {
    expect(ours('sealTo')).toEqual(['2026-12-08T11:00']);
  });
});

// Grouted by 11:00 on Wednesday 2 December: twelve hours later it is night.
describe('no time is told for the night, 21:00 to 07:00 (common practice, no source)', () => {
  const at = times(
    grouted({
      walkHours: 12,
      heavyHours: 34,
      waterHours: 61,
      sealAfterHours: [84, 109],
      stated: ['walkHours', 'heavyHours', 'waterHours', 'sealAfterHours'],
    }),
  );

  test.each([
    ['walk', '2026-12-03T07:00'],
    ['heavy', '2026-12-03T21:00'],
    ['water', '2026-12-05T07:00'],
    ['sealFrom', '2026-12-06T07:00'],
  ])('%s may be the next morning: %s', (code, from) => {
    expect(at(code)).toEqual([from]);
  });

  test('what is to be done by the night is to be done the evening before', () => {
    expect(
      times(grouted({ sealAfterHours: [84, 109], stated: ['sealAfterHours', 'sealToHours'] }))('sealTo'),
    ).toEqual(['2026-12-06T21:00']);
  });

  test('a window of the product that no working hour falls into is told as missed, and stays', () => {
    const entries = makeCalendar(
      grouted({ sealAfterHours: [84, 109], stated: ['sealAfterHours', 'sealToHours'] }),
      MONDAY,
    );
    expect(entries.find(({ code }) => code === 'seal')).toMatchObject({
      from: '2026-12-07T08:00',
      moved: 'missed',
    });
    expect(entries.some(({ code }) => code === 'sealTo')).toBe(true);
  });

  test('and so is a window of our own', () => {
    expect(at('sealTo')).toEqual(['2026-12-06T21:00']);
    expect(at('seal')).toEqual(['2026-12-07T08:00']);
  });
});

describe('sealing by grout and tile (common practice, no source)', () => {
  test('epoxy grout with glazed tile is not sealed', () => {
    expect(times(grouted({ kind: 'epoxy' }))('seal')).toEqual([]);
  });

  test('stone is sealed before grouting, and grouting waits for the sealer to dry', () => {
    const stone = times(withTile({ material: 'stone', glazed: false }));
    // It could be sealed from 15:00 on, with 1 1/2 of the 3 hours left that it takes as grouting does; then it dries for a day.
    expect([stone('sealTile'), stone('grout')]).toEqual([['2026-12-02T08:00'], ['2026-12-03T11:00']]);
  });
});

describe('cold and heat', () => {
  const cold = (tempC: number, job = JOB): Job => ({ ...job, work: { ...job.work, tempC } });

  test('18 °F colder, our waits double; a product sheet stands as it is (common practice, no source)', () => {
    const stated = { ...JOB.products.mortar, stated: ['groutAfterHours'] };
    const byProduct = { ...JOB, products: { ...JOB.products, mortar: stated } };
    expect([times(cold(11))('grout'), times(cold(11, byProduct))('grout')]).toEqual([
      ['2026-12-03T08:00'],
      ['2026-12-02T08:00'],
    ]);
  });

  test('below 50 °F the first entry forbids setting (common practice, no source)', () => {
    expect(makeCalendar(cold(9), MONDAY)[0]).toMatchObject({ code: 'doNotSet', from: '2026-11-30T08:00' });
  });

  test('a heated floor waits 28 days after grouting: BS 5385-4', () => {
    expect(times({ ...JOB, base: { ...JOB.base, heated: true } })('heat')).toEqual(['2026-12-30T11:00']);
  });
});

describe('zones in working hours', () => {
  const two = [
    { number: 1, hours: 4 },
    { number: 2, hours: 4 },
    { number: 3, hours: 5 },
  ];

  test('follow one another, each in one go', () => {
    expect(times(JOB, two)('set')).toEqual(['2026-11-30T08:00', '2026-11-30T12:00', '2026-12-01T08:00']);
  });

  test('wait for the one before where the only way out leads over it', () => {
    const job = { ...JOB, access: { ...JOB.access, onlyExit: true } };
    expect(times(job, two)('set')).toEqual(['2026-11-30T08:00', '2026-12-01T12:00', '2026-12-03T08:00']);
  });

  test('end on a quarter of an hour: a pace is no truer than that', () => {
    const [first, second] = makeCalendar(JOB, [
      { number: 1, hours: 2.71 },
      { number: 2, hours: 1 },
    ]);
    expect([first?.to, second?.from]).toEqual(['2026-11-30T10:45', '2026-11-30T10:45']);
  });

  test('start on a working day and rest over the weekend', () => {
    const job = { ...JOB, work: { ...JOB.work, from: '2026-12-04' } };
    const [zone] = makeCalendar(job, [{ number: 1, hours: 12 }]);
    expect(zone).toMatchObject({ from: '2026-12-04T08:00', to: '2026-12-07T11:30' });
  });
});

describe('a time that is not what its wait comes to says what that is, and why', () => {
  const entry = (job: Job, code: string, zones = MONDAY) =>
    makeCalendar(job, zones).find((one) => one.code === code)!;

  test('at night it is put off to the morning', () => {
    const job = grouted({ walkHours: 12, stated: ['walkHours'] });
    expect(entry(job, 'walk')).toMatchObject({ due: '2026-12-02T23:00', moved: 'night' });
    expect(entry(JOB, 'walk')).not.toHaveProperty('due');
  });

  test('work waits for working hours', () => {
    expect(entry(JOB, 'seal')).toMatchObject({ due: '2026-12-06T11:00', moved: 'work' });
  });

  test('grouting waits for the next day where too little is left of this one', () => {
    expect(entry(JOB, 'grout')).toMatchObject({ due: '2026-12-01T15:00', moved: 'oneGo' });
  });

  test('grouting begins the same day where the rest of it is long enough', () => {
    expect(entry(JOB, 'grout', [{ number: 1, hours: 4 }])).toMatchObject({
      from: '2026-12-01T12:00',
      to: '2026-12-01T15:00',
    });
  });
});

describe('a wait names what it rests on', () => {
  const entry = (job: Job, code: string) => makeCalendar(job, MONDAY).find((one) => one.code === code)!;
  const cold = { ...JOB, work: { ...JOB.work, tempC: 20 } };

  test('the wait in a warm room, where the cold makes it longer', () => {
    expect(entry(cold, 'walk')).toMatchObject({ hours: 26, warmHours: 24, tempC: 20 });
    expect(entry(JOB, 'walk')).not.toHaveProperty('warmHours');
  });

  test("the end of sealing is the product's only where its sheet gives an end", () => {
    const sources = [['sealAfterHours'], ['sealAfterHours', 'sealToHours']].map(
      (stated) => entry(grouted({ sealAfterHours: [72, 120], stated }), 'sealTo').source,
    );
    expect(sources).toEqual(['twoDays', 'job']);
  });

  test('a zone has its area and its pace', () => {
    const [zone] = makeCalendar(JOB, [{ number: 1, hours: 7, areaM2: 14 }]);
    expect(zone).toMatchObject({ areaM2: 14, paceM2PerHour: 2 });
  });
});

// Sealed on Monday 7 December from 08:00, in three hours as grouting takes; the sealer dries 24 hours from then.
describe('the room is closed again while the sealer dries (common practice, no source)', () => {
  const entry = (job: Job, code: string) => makeCalendar(job, MONDAY).find((one) => one.code === code);

  test('longer in the cold, twice as long 18 °F colder; a product sheet stands as it is', () => {
    const cold: Job = { ...JOB, work: { ...JOB.work, tempC: 11 } };
    const { sealer } = JOB.products;
    const bySheet = { ...cold, products: { ...cold.products, sealer: { ...sealer, stated: ['cureHours'] } } };
    const hours = (job: Job) => entry(job, 'sealerCures')?.hours;
    expect([hours(JOB), hours(cold), hours(bySheet)]).toEqual([24, 48, 24]);
  });

  test('from the morning of sealing to a day after its end', () => {
    expect(entry(JOB, 'sealerCures')).toMatchObject({
      from: '2026-12-07T08:00',
      to: '2026-12-08T11:00',
      hours: 24,
      source: 'memory',
    });
  });

  test('what would be allowed meanwhile waits until it is dry', () => {
    const early = grouted({ waterHours: 125, stated: ['waterHours'] });
    expect(entry(early, 'water')).toMatchObject({
      from: '2026-12-08T11:00',
      due: '2026-12-07T16:00',
      moved: 'sealer',
    });
  });

  test('where nothing is sealed it stays open', () => {
    expect(entry(grouted({ kind: 'epoxy' }), 'sealerCures')).toBeUndefined();
  });
});
