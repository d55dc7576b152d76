import { fontFiles, styleFolder } from './src/site/assetFiles.mjs';
import typescriptPlugin from './src/site/typescriptPlugin.mjs';

export default async function (config) {
  await typescriptPlugin(config, {
    entry: './siteParts.ts',
    globals: [
      't',
      't2',
      'sayIn',
      'cssString',
      'unbroken',
      'sheetBody',
      'site',
      'jobOf',
      'pageSheets',
      'inlined',
      'gallery',
    ],
    data: ['indexPages', 'galleryPages', 'jobPages', 'sheetPages', 'bundlePages', 'sawPages'],
  });
  config.addPassthroughCopy({ [styleFolder]: 'assets', ...fontFiles });
  for (const folder of ['./src/', './jobs/', './layouts/']) config.addWatchTarget(folder);
  return { dir: { input: 'layouts', includes: '_includes' }, templateFormats: ['njk'] };
}
