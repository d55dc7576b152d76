import type { Say } from './SheetView.ts';

/** Speaks the languages for which there is a catalogue. */
export interface Speaker {
  readonly say: (lang: string) => Say;
}

const CAUTIONS =
  /^(short\.)?caution\.|^limit\.house\.\w+\.(pass|untold|unnamed|why)$|^base\.film\.paint$|^sheet\.(measuring\.stops|base-sheet\.note)$/;

/**
 * Whether the words of a code keep someone from harm.
 *
 * @example
 * isCaution('short.caution.silica') //=> true
 * isCaution('care.dont.wax') //=> false
 */
export const isCaution = (code: string): boolean => CAUTIONS.test(code);

/** Whether someone whose own language it is has read its words; its catalogue says so. */
const isReviewed = (say: Say): boolean => say('language.reviewed') === 'true';

/** Words of a language; where nobody whose own language it is has read them, each caution stands in English beside them. */
export function cautiousSay(lang: string, words: Speaker): Say {
  const say = words.say(lang);
  return (code, figures) =>
    isCaution(code) && !isReviewed(say)
      ? `${say(code, figures)} · ${words.say('en')(code, figures)}`
      : say(code, figures);
}

/** What is said at the foot of a page in these languages of those among them that nobody has read yet; empty when all are. */
export function unreadNote(languages: readonly string[], words: Speaker): string {
  const unread = languages.map((lang) => words.say(lang)).filter((say) => !isReviewed(say));
  return unread
    .map((say) => `${say('form.ownName')}: ${say('language.unread')} (${words.say('en')('language.unread')})`)
    .join(' · ');
}
