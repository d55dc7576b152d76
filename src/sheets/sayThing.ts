import type { Say } from './SheetView.ts';
import { sayKind } from './sayKind.ts';

/** What job files often name: layers, bases, what comes out, and who does it; spaces as hyphens. */
const THINGS: ReadonlySet<string> = new Set([
  ...[
    'tile',
    'old-tile',
    'mortar-under-tile',
    'mortar',
    'membrane',
    'board',
    'sheet-vinyl',
    'carpet',
    'paint',
  ],
  ...['concrete', 'plywood', 'boards', 'unknown'],
  ...['door', 'doorway', 'base', 'baseboard', 'baseboards', 'toilet', 'dishwasher', 'flange'],
  ...['setter', 'owner', 'plumber', 'licensed-plumber', 'carpenter'],
]);

/** A thing by its name in the sheet's language where it is a usual one, a floor or a door; of a known kind by its kind and its name; else as the job names it. */
export function sayThing(say: Say, name: string): string {
  const own = bare(name);
  const said = oneThing(say, own);
  // In the job's own language it stays as it was written, article and all.
  return said.toLowerCase() === own.toLowerCase() ? name : said;
}

function oneThing(say: Say, name: string): string {
  const thing = name.toLowerCase().replaceAll(' ', '-');
  if (THINGS.has(thing)) return say(`thing.${thing}`);
  const [, place, what] = /^(.+) (floor|door)$/i.exec(name) ?? [];
  return place && what ? say(`thing.${what.toLowerCase()}Of`, { place }) : sayKind(say, name);
}

/** A name without its article, which another language puts otherwise. */
function bare(name: string): string {
  return name.replace(/^the /i, '');
}
