import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import type { Browser, Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { demo, fieldsOf } from '../form/support.ts';
import { browserPath, patience } from './support/browserPath.ts';
import {
  ask,
  type BuiltForm,
  broughtAlong,
  buildForm,
  fill,
  openAll,
  openForm,
  press,
  saved,
  screens,
  textIn,
  wordsOf,
} from './support/openForm.ts';
import { findAccess } from './support/visitPage.ts';

/** A room as one would write it by hand, with all kinds of answers. */
const byHand = `
title: Utility room
owner: T. Marlowe
place: 3 Weir Cottages
revision: {letter: A, date: 2027-05-03}
print: {units: inches}
tile:
  field:
    name: Clay red
    read: [7 7/8 in x 7 7/8 in, 7 13/16 in x 7 7/8 in]
    thick: 3/8 in
    box: {pieces: 20, lot: "0417"}
joint: 1/8 in
house year: 1962
access: {only toilet: yes}
contacts: {phone: 555 0166}
site: {water: "yard: tap by the gate"}
floor:
  walls:
    A-B: {read: [8 ft 1 in, 8 ft 1 1/8 in], seen: focal}
    B-C: {read: 5 ft 11 1/2 in, meets: cabinet}
    C-D: {read: 8 ft 0 7/8 in, touch: no}
    D-A: {read: 5 ft 11 3/8 in}
  diagonals: {A-C: 10 ft 0 1/2 in, B-D: 10 ft 0 1/4 in}
  doorways:
    door: {in: D-A, from D: 20 in, clear: 28 in, wall: 4 1/2 in, left: post 1 1/2 in x 1 1/4 in, right: undercut 1/2 in, beyond: wood}
  obstacles:
    obstacle: {circle: 4 in, from C-D: 12 in, from D-A: 50 in, meets: pipe}
  exposure: wet
base:
  below: boards
  removed: {layer: 1/8 in}
  heights:
    door: {height: 3/4 in, above: layer}
`;

const packetOf = (text: string) => {
  const { job, problems } = readJob(text, 'job.yaml', 'job');
  if (!job) throw new Error(JSON.stringify(problems));
  return makePacket(job);
};

/** Writes every answer of a job file into an open form, in the order asked. */
async function typeIn(page: Page, text: string): Promise<void> {
  await press(page, 'startrectangle');
  for (const list of ['floor/doorways', 'floor/obstacles', 'base/removed', 'base/heights'])
    await press(page, `add:${list}`);
  for (const diagonal of ['A-C', 'B-D']) {
    await page.select('[id="choose:floor/diagonals"]', diagonal);
    await press(page, 'add:floor/diagonals');
  }
  for (const field of fieldsOf(text)) {
    if (field.from !== undefined && field.values.length > 0) await fill(page, `${field.id}.from`, field.from);
    for (const [part, value] of field.values.entries()) await fill(page, `${field.id}.${part}`, value);
  }
}

describe('the form', () => {
  let browser: Browser;
  let form: BuiltForm;

  beforeAll(async () => {
    browser = await openBrowser(browserPath());
    form = await buildForm();
  }, patience);
  afterAll(() => browser?.close());

  const names = Object.keys(screens) as (keyof typeof screens)[];

  test('is one file of less than 700 kB, with no module of the machine in it', () => {
    const html = readFileSync(form.file, 'utf8');
    expect(html.length).toBeLessThan(700_000);
    expect(html).not.toMatch(/["']node:|\brequire\(["']|src="(?!data:)|<link rel="stylesheet"/);
  });

  // The HTML standard, as html-validate checks it.
  test('is valid HTML', async () => {
    const validator = new HtmlValidate({ extends: ['html-validate:standard'] });
    const { results } = await validator.validateString(readFileSync(form.file, 'utf8'));
    expect(
      results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`)),
    ).toEqual([]);
  });

  describe.each(names)('on a %s', (screen) => {
    test(
      'gives the packet that the same answers written by hand give',
      async () => {
        const { page, asked, errors } = await openForm(browser, form, screen);
        await typeIn(page, byHand);
        const text = await saved(page, form.folder);
        expect(text).toBe(await textIn(page));
        expect(packetOf(text)).toEqual(packetOf(byHand));
        expect([asked, errors]).toEqual([[], []]);
      },
      patience,
    );

    const lang = screen === 'telephone' ? 'es' : 'en';
    test(
      `is accessible in ${lang}, fits the screen and a thumb`,
      async () => {
        const wrong = demo('fernlea-boot-room')
          .replace('6 ft 4 3/8', '8 ft 4 3/8')
          .replace('circle: 7 in', 'circle: 7');
        const { page, errors } = await openForm(browser, form, screen, broughtAlong(wrong));
        await page.click(`[data-lang=${lang}]`);
        await openAll(page);
        // WCAG 2.2 level AA, as axe-core checks it.
        expect(await findAccess(page)).toEqual([]);
        expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
        const low = await page.evaluate(
          `[...document.querySelectorAll('button, input:not([type=radio]), select, summary')]
          .filter((one) => one.offsetParent && one.getBoundingClientRect().height < 44).map((one) => one.outerHTML)`,
        );
        expect(low).toEqual([]);
        expect(errors).toEqual([]);
      },
      patience,
    );
  });

  test(
    'lets a file go out as it came in, its comments and unknown keys with it',
    async () => {
      const text = `# the office's own\nshelf: 4   # not ours\n${demo('quarry-kitchen')}`;
      const { page } = await openForm(browser, form, 'telephone');
      const file = join(form.folder, 'given.yaml');
      writeFileSync(file, text);
      const box = await page.$('input[type=file]');
      await (box as unknown as { uploadFile(path: string): Promise<void> }).uploadFile(file);
      await page.waitForSelector('#room svg');
      expect(await saved(page, form.folder)).toBe(text);
      await fill(page, 'floor/walls/A-B/read.0', '14 ft 3 1/8 in');
      expect(await saved(page, form.folder)).toBe(text.replace('14 ft 3 in', '14 ft 3 1/8 in'));
      await press(page, 'undo');
      expect(await wordsOf(page, '#elsewhere')).toContain('shelf');
    },
    patience,
  );

  test(
    'keeps what it has when a text that is pasted cannot be read, and says where it fails',
    async () => {
      const { page } = await openForm(browser, form, 'telephone', broughtAlong(demo('quarry-kitchen')));
      await ask(page, '#text', '{ one.value = "title: {"; }');
      await press(page, 'use');
      expect(await wordsOf(page, '#refused')).toMatch(/^job\.yaml:\d/);
      await ask(
        page,
        '#text',
        `{ one.value = ${JSON.stringify('title: pasted\nfloor: {walls: {A-B: 3 m, B-C: 2 m, C-A: 3 m}}\n')}; }`,
      );
      await press(page, 'use');
      expect(await textIn(page)).toMatch(/^title: pasted/);
    },
    patience,
  );

  test(
    'tells as one types what does not close, in the language one reads',
    async () => {
      const { page } = await openForm(browser, form, 'telephone', broughtAlong(demo('fernlea-boot-room')));
      const told = () => wordsOf(page, '#told');
      expect(await told()).toMatch(/agree/);
      await fill(page, 'floor/walls/B-C/read.0', '8 ft 4 3/8 in');
      expect(await told()).toMatch(/1 problem/);
      const wall = await wordsOf(page, '.is-suspect');
      expect(wall).toMatch(/Read it again.*Wall/);
      expect(await wordsOf(page, '.is-suspect .problems:not([hidden])')).toMatch(/inch/);
      expect(await wordsOf(page, '#room svg')).toContain('?');
      await page.click('[data-lang=es]');
      expect(await wordsOf(page, '.is-suspect')).toMatch(/Mídala otra vez/);
      await fill(page, 'floor/walls/B-C/read.0', '6 ft 4 3/8 in');
      expect(await told()).toMatch(/concuerdan/);
    },
    patience,
  );

  test(
    'remembers the draft and the language on this device',
    async () => {
      const { page } = await openForm(browser, form, 'telephone');
      await page.click('[data-lang=es]');
      await press(page, 'startL');
      await fill(page, 'title.0', 'Cocina de la abuela');
      await page.reload();
      expect(await textIn(page)).toContain('title: Cocina de la abuela');
      expect(await ask(page, 'html', 'one.lang')).toBe('es');
    },
    patience,
  );

  test(
    'says at its foot that a language was not yet read by a native speaker',
    async () => {
      const { page } = await openForm(browser, form, 'telephone');
      const foot = () => ask(page, '#unread', 'one.textContent');
      await page.click('[data-lang=es]');
      expect(await foot()).toBe('');
      await page.click('[data-lang=pt]');
      expect(await foot()).toContain('not yet read by a native speaker');
      expect(await ask(page, 'html', 'one.scrollWidth <= innerWidth')).toBe(true);
    },
    patience,
  );

  test(
    'has keys for units, which number keyboards lack',
    async () => {
      const { page } = await openForm(browser, form, 'telephone');
      await press(page, 'startrectangle');
      const read = 'floor/walls/A-B/read.0';
      await page.focus(`[id="${read}"]`);
      await page.keyboard.type('9');
      const keys = await page.$$('#units button');
      expect(await ask(page, `[id="${read}"]`, 'one.inputMode')).toBe('decimal');
      await keys[0]!.tap();
      await page.keyboard.type('2');
      await keys[1]!.tap();
      expect(await ask(page, `[id="${read}"]`, 'one.value')).toBe('9 ft 2 in');
      await page.keyboard.press('Tab');
      expect(await textIn(page)).toContain('A-B: {read: 9 ft 2 in}');
    },
    patience,
  );
});
