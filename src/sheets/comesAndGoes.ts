import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import { heightKind } from '../job/heightKind.ts';
import { toiletForgotten } from '../job/toiletForgotten.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';
import { stoppedLayers } from './stoppedLayers.ts';
import { PLUMBED, whoDoes } from './whoDoes.ts';

/** What comes up or out before the work on the base, and where it goes back when. */
export interface ComesAndGoes {
  readonly what: string;
  readonly who: string;
  /** Empty while nobody may take it out. */
  readonly out: string;
  /** Empty for a layer of the old floor, which does not come back. */
  readonly back: string;
  /** What is seen to first: grout is sealed round what stands there by then, sealant skins before it is covered; empty for the rest. */
  readonly sealed: string;
}

/** What is plumbed waits for heavy use, and for the sealer where nobody could join it before; an appliance for the sealer too, where the room is closed again for it; base for the soft joint that it covers; doors and carpet for a light foot. */
function backAfter(
  what: string,
  heavy: CalendarEntry | undefined,
): 'heavy' | 'furniture' | 'softJoints' | 'walk' {
  if (/\b(?:base|baseboards?|trim|skirting|rodapié|zócalo)\b/i.test(what)) return 'softJoints';
  if (heightKind(what) === 'appliance') return 'furniture';
  if (!PLUMBED.test(what)) return 'walk';
  return heavy?.furniture === 'allLater' ? 'furniture' : 'heavy';
}

/**
 * What comes up and what comes out and goes back: who does it, before which hour it is out and after which it may come back.
 * A toilet on a flange of the job is there even where the job forgot it.
 */
export function comesAndGoes(context: SheetContext): readonly ComesAndGoes[] {
  const { packet, say, time } = context;
  const { base, calendar } = packet;
  const at = (asked: string) => calendar.find(({ code }) => code === asked);
  const sealing = at('seal');
  const by = (...after: readonly string[]) => {
    const next = calendar.find(({ code }) => after.includes(code));
    return next ? say('sheet.base-sheet.before', { time: time(next.from) }) : '';
  };
  const lifted = by('fill', 'layer', 'set');
  const out = by('lift', 'fill', 'layer', 'set');
  const backAt = (what: string) => {
    const after = backAfter(what, at('heavy'));
    const entry = at(after) ?? (after === 'furniture' ? at('heavy') : undefined);
    if (!entry) return { back: '', sealed: '' };
    // Grout is sealed round what is joined to water and stands there by then; the rest stands off the floor.
    const skins = after === 'softJoints';
    const round = sealing && entry.from < sealing.from && PLUMBED.test(what);
    return {
      back: say('sheet.base-sheet.after', { time: time(entry.from) }),
      sealed: skins ? say('sheet.base-sheet.skinned') : round ? say('sheet.base-sheet.sealed') : '',
    };
  };
  return [
    ...base.removed.map(({ name }) => {
      const stopped = stoppedLayers(packet).has(name);
      return {
        what: sayThing(say, name),
        who: say(stopped ? 'height.who.laboratory' : 'height.who.setter'),
        out: stopped ? '' : lifted,
        back: '',
        sealed: '',
      };
    }),
    ...base.comesOut.map(({ what }) => ({
      what: sayThing(say, what),
      who: whoDoes(context, what, 'other'),
      out,
      ...backAt(what),
    })),
    ...(toiletForgotten(packet.spec)
      ? [
          {
            what: say('sheet.base-sheet.toilet'),
            who: say('height.who.plumber'),
            out,
            ...backAt('toilet'),
          },
        ]
      : []),
  ];
}
