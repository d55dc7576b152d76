import type { CareLine } from '../care/Care.ts';
import { drawCarePicture, drawDropTest } from '../drawing/index.ts';
import { isLaid } from './isLaid.ts';
import { noToilet } from './noToilet.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';
import { sayThing } from './sayThing.ts';

/** What the owner does today, this month and in a year, for this tile, grout and sealer. */
export const careSheet: Sheet = {
  name: 'care-sheet',
  for: 'owner',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const { care, spec, tiles } = context.packet;
    const { dates } = care;
    return [
      {
        data: {
          walk: context.time(dates.walk),
          wet: context.time(dates.wet),
          // The hours that are booked, which may lie after the window in a job that came too late for it.
          sealOn: dates.closedFrom ? context.time(dates.closedFrom) : '',
          sealFrom: dates.sealFrom ? context.time(dates.sealFrom) : '',
          sealTo: dates.sealTo ? context.time(dates.sealTo) : '',
          held: readingsSpeakAgainst(context) ? context.say('heldDates') : '',
          closed: closedAgain(context),
          late: lateSealing(context),
          noToilet: noToilet(context, false),
          sealNeeded: care.seal.needed,
          sealedBefore: context.packet.calendar.some(({ code }) => code === 'sealTile'),
          checkMonths: dates.checkAgainMonths ?? 0,
          dos: care.dos.map((line, i) => pictured(context, line, `do-${i + 1}`)),
          donts: care.donts.map((line, i) => pictured(context, line, `dont-${i + 1}`)),
          dropTest: care.seal.needed ? dropTest(context) : '',
          cautions: care.cautions
            .filter(({ code }) => OWNERS.has(code))
            .map((line) => sayCare(context, line)),
          // Where the spares lie has a line of its own, with their number.
          used: care.used.filter(({ code }) => code !== SPARES).map((line) => sayCare(context, line)),
          several: Object.keys(tiles).length > 1 ? 'yes' : 'no',
          keep: Object.values(tiles).reduce((sum, plan) => sum + plan.keep, 0),
          over: Object.values(tiles).reduce((sum, plan) => sum + plan.over, 0),
          setter: spec.contacts.setter ?? '',
          phone: spec.contacts.phone ?? '',
        },
      },
    ];
  },
};

/** Who comes to seal and when, how long nobody may walk there once more, and what else is to be kept off. */
function closedAgain({ packet, say, time }: SheetContext): string {
  const { closedFrom, closedTo } = packet.care.dates;
  if (!closedFrom || !closedTo) return '';
  const by = packet.spec.products.sealer.by;
  const figures = {
    from: time(closedFrom),
    to: time(closedTo),
    who: by === undefined ? 'none' : sayThing(say, by),
  };
  return say(isLaid(packet) ? 'sheet.care-sheet.closedLaid' : 'sheet.care-sheet.closed', figures);
}

/** That sealing is booked too late; when the floor is laid no day can be moved for it. */
function lateSealing({ packet, say, time }: SheetContext): string {
  const { sealMissed } = packet.care.dates;
  if (!sealMissed) return '';
  const figures = { latest: time(sealMissed) };
  return say(isLaid(packet) ? 'sheet.care-sheet.lateLaid' : 'sheet.care-sheet.late', figures);
}

const SPARES = 'care.used.spares';

/** Cautions for those who live there; what the saw and wet mortar do concerns the crew. */
const OWNERS: ReadonlySet<string> = new Set(['caution.asbestos', 'caution.lead', 'caution.licensed']);

function dropTest({ say, units }: SheetContext): string {
  return drawDropTest({
    id: 'drop-test',
    label: say('sheet.care-sheet.test'),
    ...units,
    say,
  }).svg;
}

function pictured(context: SheetContext, line: CareLine, id: string) {
  const said = sayCare(context, line);
  return { ...said, picture: drawCarePicture(line.code, { id: `care-${id}`, label: said.text }).svg };
}

function sayCare(context: SheetContext, { code, figures }: CareLine) {
  return { code, text: context.say(code, sayFigures(context, figures)) };
}
