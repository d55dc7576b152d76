/** The folders of `src` from the ground up: a file imports from its own folder and from those before it. */
export const folders: readonly string[] = [
  'measure',
  'geometry',
  'trade',
  'job',
  'pattern',
  'room',
  'layout',
  'cuts',
  'tiles',
  'materials',
  'zones',
  'calendar',
  'care',
  'packet',
  'drawing',
  'sheets',
  'exchange',
  'form',
  'site',
];

/** Packages that a folder of the core may import. `src/site` may import any. */
export const packagesOf: Readonly<Record<string, readonly string[]>> = {
  geometry: ['clipper2-ts'],
  job: ['yaml', 'zod'],
  calendar: ['luxon'],
  drawing: ['d3-shape'],
  form: ['yaml'],
  exchange: ['@tarikjabiri/dxf', 'ical-generator'],
};
