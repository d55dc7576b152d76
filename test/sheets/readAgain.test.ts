import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { remeasureOver } from '../../src/trade/index.ts';
import { patience } from '../pages/support/browserPath.ts';
import { demoSite } from '../pages/support/demoSite.ts';
import { demos, demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

/** Floors whose readings name a slip, or whose walk round the room misses by more than practice lets stand. */
const isOut = ({ packet }: (typeof demos)[number]) =>
  packet.surfaces.some(
    ({ adjustment }) =>
      adjustment.suspects.length > 0 || adjustment.misclosure > remeasureOver(packet.spec.print.system),
  );

const dataOf = ({ sheets }: (typeof demos)[number], template: string) =>
  sheets.filter((sheet) => sheet.template === template).map(({ data }) => data as Record<string, unknown>);

const isHeld = (demo: (typeof demos)[number]) =>
  demo.packet.job.status !== 'finished' &&
  (isOut(demo) || dataOf(demo, 'set-out').some(({ again }) => again));

/** Where the owner is told what for. */
const told = [
  ['care-sheet', 'heldDates'],
  ['calendar', 'heldDates'],
  ['choice-sheet', 'sheet.choice-sheet.held'],
] as const;

const OWNERS = new Set(['calendar', 'care-sheet', 'choice-sheet', 'door-sign', 'record']);

describe('readings that do not agree', () => {
  test.each(demos.filter(isOut))(
    '$slug: the job sheet names them, and the set-out says not to snap',
    (demo) => {
      const ids = demo.packet.surfaces.flatMap(({ adjustment }) =>
        adjustment.suspects.flatMap((one) => one.ids),
      );
      const gates = dataOf(demo, 'job-sheet')[0]!.gates as { what: string; note: string; state: string }[];
      const { crew } = demo.packet.spec.print;
      const [again] = gates.filter(({ what }) => what === words.say(crew[0]!)('gate.readAgain'));
      expect(again?.state).toBe('open');
      for (const id of ids) expect(again?.note).toContain(id);
      expect(dataOf(demo, 'set-out').some(({ again }) => again)).toBe(true);
    },
  );

  test.each(demos)(
    '$slug: stops every sheet, those that speak to the owner in words of their own',
    (demo) => {
      const held = demo.sheets.filter(({ hold }) => hold);
      const bound = demo.sheets.filter(({ head }) => head).map(({ name }) => name);
      expect(held.map(({ name }) => name)).toEqual(isHeld(demo) ? bound : []);
      for (const { name, lang, hold } of held)
        expect([name, hold]).toEqual([
          name,
          words.say(lang)(OWNERS.has(name) ? 'gate.holdOwner' : 'gate.hold'),
        ]);
    },
  );

  test.each(['rowan-bath', 'sedge-washroom'].flatMap((slug) => languages.map((lang) => ({ slug, lang }))))(
    '$slug in $lang: care sheet, calendar and choice sheet tell the owner what for',
    ({ slug, lang }) => {
      const demo = sheetsOf(slug, inLanguage(demoTexts[slug]!, lang), [
        ...told.map(([name]) => name),
        'set-out',
      ]);
      const say = words.say(lang);
      for (const [name, code] of told)
        for (const data of dataOf(demo, name)) expect(data.held).toBe(isHeld(demo) ? say(code) : '');
    },
  );

  test.each(demos.filter((demo) => !isOut(demo) && demo.packet.surfaces.length === 1))(
    '$slug: nothing is said where they agree',
    (demo) => {
      const says = dataOf(demo, 'set-out').map(({ again }) => again);
      const leans = JSON.stringify(dataOf(demo, 'job-sheet')).includes(
        words.say(demo.packet.spec.print.crew[0]!)('gate.readAgain'),
      );
      expect(says).toEqual([leans]);
    },
  );

  test('both kinds are among the demo jobs', () => {
    expect(new Set(demos.map(isOut))).toEqual(new Set([true, false]));
  });

  test(
    'the saw list and each zone say not to cut or set yet, in both languages of the crew',
    async () => {
      const { output } = await demoSite();
      const page = (slug: string, name: string) =>
        readFileSync(join(output, slug, `${name}.html`), 'utf8').replaceAll(/\s+/g, ' ');
      const says = (slug: string, name: string, code: string) =>
        ['en', 'es'].map((lang) => page(slug, name).includes(words.say(lang)(code)));
      for (const { slug } of demos.filter(isHeld)) {
        expect(says(slug, 'saw-list', 'sheet.saw-list.held')).toEqual([true, true]);
        expect(says(slug, 'zone-1', 'sheet.zone.held')).toEqual([true, true]);
      }
      expect(says('sedge-washroom', 'saw-list', 'sheet.saw-list.held')).toEqual([false, false]);
      expect(says('sedge-washroom', 'zone-1', 'sheet.zone.held')).toEqual([false, false]);
    },
    patience,
  );
});
