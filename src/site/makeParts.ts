import { cautiousSay } from '../sheets/cautiousSay.ts';
import { decimalMark } from '../sheets/decimalMark.ts';
import { makeGallery } from '../sheets/gallery/makeGallery.ts';
import type { SheetView } from '../sheets/SheetView.ts';
import { cssString } from './cssString.ts';
import { galleryPages, gallerySystem } from './galleryPages.ts';
import type { Inlined } from './inlined.ts';
import { siteLanguage } from './packetOf.ts';
import type { SiteJob } from './SiteJob.ts';
import { unbroken } from './unbroken.ts';
import type { Figures, Words } from './words.ts';

/** What Nunjucks gives a global function as `this`. */
interface TemplateContext {
  readonly ctx: Readonly<Record<string, unknown>>;
  readonly env: { render(name: string, data: object): string };
}

export interface SheetFailure {
  readonly slug: string;
  readonly sheet: string;
  readonly message: string;
}

/** What the templates get: functions to call, and lists of pages. Big data stay out of the lists: Eleventy copies them. */
export interface Parts {
  readonly globals: Readonly<Record<string, (this: TemplateContext, ...args: never[]) => unknown>>;
  readonly data: Readonly<Record<string, readonly object[]>>;
  /** Filled while the pages are written. */
  readonly failures: SheetFailure[];
}

export interface SiteFacts {
  /** Which pages are made; all when it is missing. */
  readonly pages?: 'jobs' | 'index';
  /** Whether PDFs stand beside the pages. */
  readonly pdfs: boolean;
  /** Where the sheets' own templates lie. */
  readonly sheetFolder: string;
  /** What the page beside the saw carries inside. */
  readonly inlined: Inlined;
}

function languageOf(context: TemplateContext): string {
  const { entry } = context.ctx as { entry?: { lang?: string } };
  const lang = context.ctx.lang ?? entry?.lang;
  if (typeof lang === 'string') return lang;
  throw new Error('t() has no language here: import the macro "with context"');
}

function pageLists(jobs: readonly SiteJob[], words: Words, pages: SiteFacts['pages']): Parts['data'] {
  const written = jobs.filter((job) => job.pages === 'write' && pages !== 'index');
  const title = (job: SiteJob) => job.card?.title ?? job.slug;
  return {
    indexPages: pages === 'jobs' ? [] : [{ lang: siteLanguage }],
    galleryPages: pages === 'jobs' ? [] : galleryPages(words),
    jobPages: written.map((job) => ({ slug: job.slug, lang: job.lang, title: title(job) })),
    sheetPages: written.flatMap((job) =>
      job.sheets.map(({ name, lang, title: own }) => ({
        slug: job.slug,
        name,
        lang,
        title: `${own} · ${title(job)}`,
      })),
    ),
    sawPages: written.flatMap((job) =>
      (job.saw ?? []).map(({ file }, part) => ({
        slug: job.slug,
        name: 'saw',
        file,
        part,
        lang: job.lang,
        title: words.say(job.lang)('saw.title', {
          job: title(job),
          revision: job.card?.revision ?? '',
          stamp: job.packet?.job.stamp ?? '',
        }),
      })),
    ),
    bundlePages: written.flatMap((job) =>
      job.bundles.map(({ name, sheets }) => {
        const lang = sheets[0]?.lang ?? siteLanguage;
        const own = words.say(lang)(`site.bundle.${name}`);
        const head = sheets.some((sheet) => sheet.head) ? `${title(job)} · ` : '';
        return { slug: job.slug, name, bundle: true, lang, title: head + own };
      }),
    ),
  };
}

interface Entry {
  readonly slug: string;
  readonly name: string;
  readonly bundle?: boolean;
}

/** The sheets of one page: those of a print document, or the one of that name. */
function sheetsOf(job: SiteJob | undefined, name: string, bundle = false): readonly SheetView[] {
  if (bundle) return job?.bundles.find((one) => one.name === name)?.sheets ?? [];
  return job?.sheets.filter((sheet) => sheet.name === name) ?? [];
}

/** The parts of the site from its jobs. A sheet whose template fails leaves a failure and an empty place, not a stop. */
export function makeParts(jobs: readonly SiteJob[], words: Words, facts: SiteFacts): Parts {
  const failures: SheetFailure[] = [];
  const bySlug = new Map(jobs.map((job) => [job.slug, job]));
  const globals: Record<string, (this: TemplateContext, ...args: never[]) => unknown> = {
    t(code: string, figures?: Figures) {
      return cautiousSay(languageOf(this), words)(code, figures);
    },
    t2(code: string, figures?: Figures) {
      const { second } = this.ctx;
      return typeof second === 'string' ? words.say(second)(code, figures) : '';
    },
    sayIn: (lang: string, code: string, figures?: Figures) => words.say(lang)(code, figures),
    cssString,
    unbroken,
    site: () => ({ jobs, ...facts }),
    inlined: () => facts.inlined,
    gallery: (lang: string) =>
      makeGallery(cautiousSay(lang, words), { system: gallerySystem(lang), decimal: decimalMark(lang) }),
    jobOf: (slug: string) => bySlug.get(slug),
    pageSheets: ({ slug, name, bundle }: Entry) => sheetsOf(bySlug.get(slug), name, bundle),
    sheetBody(slug: string, sheet: SheetView) {
      const { name, template, lang, second, data } = sheet;
      try {
        return this.env.render(`${facts.sheetFolder}/${template}.njk`, {
          sheet,
          data,
          lang,
          second,
        });
      } catch (error) {
        failures.push({ slug, sheet: name, message: (error as Error).message });
        return '';
      }
    },
  };
  return { globals, data: pageLists(jobs, words, facts.pages), failures };
}
