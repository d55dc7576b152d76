const files = 'node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';

function font(part, weight) {
  return [`${files}-${part}-${weight}-normal.woff2`, `assets/fonts/${part}-${weight}.woff2`];
}

/** Fonts of the site: file in the program's folder → place under the output. */
export const fontFiles = Object.fromEntries(
  ['latin', 'latin-ext'].flatMap((part) => [font(part, 400), font(part, 700)]),
);

/** Folder of the styles, all of which go to `assets`. */
export const styleFolder = 'layouts/styles';
