import { existsSync, readFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { fontFiles } from './assetFiles.mjs';
import { siteLanguage } from './packetOf.ts';
import type { Places } from './places.ts';
import { sourcesMark } from './programMark.ts';
import type { Words } from './words.ts';
import { writeFile } from './writeFile.ts';

/** The first source of the form's script. */
const entry = 'src/site/form/startForm.ts';
/** Beginnings of the codes whose words the form says. */
const spoken = /^(form|ask|problem|language)\.|^site\.allJobs$/;

/** The form's script: the core and what shows it, in one piece. It is made anew only when a source has changed. */
async function script(home: string): Promise<string> {
  // It is made from the program alone, so it is kept with the program, wherever the jobs lie.
  const kept = join(home, '.cache', 'form', 'form.js');
  const mark = `/*${sourcesMark(home)}*/\n`;
  const before = existsSync(kept) ? readFileSync(kept, 'utf8') : '';
  if (before.startsWith(mark)) return before.slice(mark.length);
  const { outputFiles } = await build({
    absWorkingDir: home,
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'silent',
  });
  const made = outputFiles[0]!.text;
  writeFile(`${kept}.${process.pid}`, mark + made);
  renameSync(`${kept}.${process.pid}`, kept);
  return made;
}

/** The font in the page itself; the letters of the page's languages are all in its first part. */
function fonts(home: string): string {
  const own = Object.entries(fontFiles).filter(
    ([, place]) => place.includes('/latin-4') || place.includes('/latin-7'),
  );
  return own
    .map(([file, place]) => {
      const data = readFileSync(join(home, file)).toString('base64');
      const weight = /-(\d+)\./.exec(place)![1];
      return `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:${weight};src:url("data:font/woff2;base64,${data}") format("woff2")}`;
    })
    .join('\n');
}

function wordsJson(words: Words): string {
  const catalogues = Object.fromEntries(
    words.languages.map((lang) => {
      const codes = words.codes(lang).filter((code) => spoken.test(code));
      return [lang, Object.fromEntries(codes.map((code) => [code, words.message(lang, code)]))];
    }),
  );
  return JSON.stringify(catalogues).replaceAll('<', '\\u003c');
}

/** The form as one page that needs nothing else: script, styles, fonts and words are in it. */
export async function formPage(places: Places, words: Words): Promise<string> {
  const say = words.say(siteLanguage);
  const styles = readFileSync(join(places.home, 'src/site/form/form.css'), 'utf8');
  const buttons = words.languages.map(
    (lang) =>
      `<button type="button" data-lang="${lang}" lang="${lang}" aria-pressed="${lang === siteLanguage}">${words.say(lang)('form.ownName')}</button>`,
  );
  return `<!doctype html>
<html lang="${siteLanguage}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content">
<title>${say('form.title')}</title>
<style>
${fonts(places.home)}
${styles}</style>
</head>
<body>
<header><h1 id="title">${say('form.title')}</h1><a id="home" href="./index.html">${say('site.allJobs')}</a><div id="languages" role="group" aria-label="${say('form.language')}">${buttons.join('')}</div></header>
<main id="form"><noscript><p>${say('form.needsScript')}</p></noscript></main>
<footer id="unread"></footer>
<div id="units" role="group" aria-label="${say('form.unitsName')}" hidden></div>
<script type="application/json" id="words">${wordsJson(words)}</script>
<script>${(await script(places.home)).replaceAll('</script', '<\\/script')}</script>
</body>
</html>
`;
}
