import { drawSection, type SectionOf } from '../drawing/index.ts';
import { asLaid } from '../materials/asLaid.ts';
import type { Ticks } from '../measure/index.ts';
import type { HeightResult, Packet } from '../packet/Packet.ts';
import { undercutPlay } from '../trade/index.ts';
import { pageSpace } from './drawingSpace.ts';
import { isLaid } from './isLaid.ts';
import { isUndercut } from './isUndercut.ts';
import { laidCode } from './laidCode.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import type { Say } from './SheetView.ts';
import { sayApart } from './sayApart.ts';
import { sayThing } from './sayThing.ts';
import { whoDoes } from './whoDoes.ts';

/** Does the floor meet its doors, flanges and neighbours? The layers cut through, then each height with pass or fail. */
export const heights: Sheet = {
  name: 'heights',
  for: 'all',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const { packet, say, length, units } = context;
    const { paper } = packet.spec.print;
    if (packet.layers.length === 0) return [];
    const drawing = drawSection(inWords(packet, say), {
      id: 'section',
      label: say('sheet.heights.drawing'),
      ...units,
      say,
      widest: Math.floor(pageSpace(paper, 'portrait').widthMm),
    });
    return [
      {
        ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
        data: {
          drawing: drawing.svg,
          ...captions(context),
          stack: length(packet.heights.stack),
          removed:
            packet.heights.removed > 0
              ? say('sheet.heights.removed', { removed: length(packet.heights.removed) })
              : say('sheet.heights.nothingRemoved'),
          undercut: isUndercut(packet) ? length(packet.heights.undercut) : '',
          undercutHow: say('sheet.heights.undercutHow', {
            play: length(undercutPlay(packet.spec.print.system)),
          }),
          undercutWho: whoDoes(context, 'jamb', 'undercut'),
          results: packet.heights.results.map((result) => resultRow(context, result)),
          toMeasure: (packet.heights.toMeasure ?? []).map(({ name, code }) => ({
            name,
            text: isLaid(packet) ? '' : say(code),
          })),
        },
      },
    ];
  },
};

/** What the tables ask for: all of it before tile is ordered, of a floor that is laid nothing more. */
function captions({ packet, say }: SheetContext) {
  return isLaid(packet)
    ? {
        before: say('sheet.heights.beforeLaid'),
        stateOf: say('sheet.heights.stateLaid'),
        toMeasureOf: say('sheet.heights.toMeasureLaid'),
      }
    : {
        before: say('sheet.heights.before'),
        stateOf: say('sheet.heights.state'),
        toMeasureOf: say('sheet.heights.toMeasure'),
      };
}

/** Layers and heights named in the language of the sheet. */
function inWords(packet: Packet, say: Say): SectionOf {
  const { base, heights } = packet;
  const named = <T extends { readonly name: string }>(all: readonly T[]) =>
    all.map((one) => ({ ...one, name: sayThing(say, one.name) }));
  const { removed, kept, fresh } = base;
  return {
    base: {
      ...base,
      below: sayThing(say, base.below),
      removed: named(removed),
      kept: named(kept),
      fresh: named(asLaid(fresh)),
    },
    heights: { ...heights, results: named(heights.results) },
    isUndercut: isUndercut(packet),
  };
}

/** Heights that neither fit nor fail as they are: one to measure, one to measure again, and a flange that fits when it is raised. */
const STATES: Readonly<Record<string, string>> = {
  'height.appliance.measure': 'measure',
  'height.appliance.measureLaid': 'toMeasureLaid',
  'height.flange.onFall': 'measure',
  'height.flange.onFallLaid': 'toMeasureLaid',
  'height.appliance.tight': 'tight',
  'height.flange.spacers': 'raise',
};

function resultRow(context: SheetContext, { name, kind, after, pass, code: found, figures }: HeightResult) {
  const code = laidCode(context.packet, found);
  const state = STATES[code] ?? (pass ? 'pass' : 'fail');
  return {
    name: sayThing(context.say, name),
    ...afterText(context, kind, after),
    pass,
    state: context.say(`sheet.heights.${state}`),
    text: context.say(code, sayApart(context, figures)),
    who: whoDoes(context, name, kind),
  };
}

/** How far a thing stands above the tile or below it, with its sign; the clear height of an opening is no such distance and says so. */
function afterText({ say, length }: SheetContext, kind: string, after: Ticks) {
  return kind === 'appliance'
    ? { after: length(after), measured: say('sheet.heights.opening') }
    : { after: `${after > 0 ? '+' : ''}${length(after)}`, measured: '' };
}
