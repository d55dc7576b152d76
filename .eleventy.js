import typescriptPlugin from './src/site/typescriptPlugin.mjs';

export default async function (config) {
  await typescriptPlugin(config, {
    entry: './siteParts.ts',
    globals: ['t', 'sayIn', 'cssString', 'sheetBody', 'site', 'jobOf', 'pageSheets', 'noteText'],
    data: ['jobPages', 'sheetPages', 'bundlePages'],
  });
  config.addWatchTarget('./src/');
  config.addWatchTarget('./jobs/');
  config.addWatchTarget('./layouts/');
  return { dir: { input: 'layouts', includes: '_includes', output: 'output' }, templateFormats: ['njk'] };
}
