import type { System } from '../measure/index.ts';
import { siteLanguage } from './packetOf.ts';
import type { Words } from './words.ts';

/** The page of all patterns in one language. */
export interface GalleryPage {
  readonly lang: string;
  readonly file: string;
  readonly title: string;
  /** Units of its sizes: feet and inches where the site's own language is spoken, else millimetres. */
  readonly system: System;
  readonly others: readonly { readonly lang: string; readonly file: string; readonly name: string }[];
}

/** File of the page of all patterns in a language, beside the index. */
export const galleryFile = (lang: string) =>
  lang === siteLanguage ? 'patterns.html' : `patterns.${lang}.html`;

export const gallerySystem = (lang: string): System => (lang === siteLanguage ? 'inches' : 'mm');

/** One page a language, each with the way to the others. */
export function galleryPages(words: Words): readonly GalleryPage[] {
  const all = words.languages.map((lang) => ({
    lang,
    file: galleryFile(lang),
    name: words.say(lang)('form.ownName'),
  }));
  return all.map(({ lang, file }) => ({
    lang,
    file,
    title: words.say(lang)('gallery.title'),
    system: gallerySystem(lang),
    others: all.filter((other) => other.lang !== lang),
  }));
}
