import { drawLiveRoom } from '../../form/drawLiveRoom.ts';
import { printLength, type Ticks } from '../../measure/index.ts';
import type { Adjustment, Suspect } from '../../room/Room.ts';
import type { FormContext } from './FormContext.ts';
import { plain, tag } from './tag.ts';

function suspectLine(
  { ids, verdict, slip }: Suspect,
  length: (ticks: Ticks) => string,
  say: FormContext['say'],
): string {
  const figures = { ids: ids.join(', '), slip: length(Math.abs(slip)), long: slip < 0 ? 'short' : 'long' };
  return verdict === 'named' ? say('form.suspect.named', figures) : say('form.suspect.tied', figures);
}

function checkLines(
  adjustment: Adjustment,
  length: (ticks: Ticks) => string,
  say: FormContext['say'],
): readonly string[] {
  const next = adjustment.next?.id ?? adjustment.measureNext;
  const advice = next === undefined ? [] : [say('form.readNext', { id: next.replace(/:.*/, '') })];
  if (adjustment.redundancy <= 0) return [say('form.unchecked'), ...advice];
  const suspects = adjustment.suspects.map((suspect) => suspectLine(suspect, length, say));
  const worst = Math.max(...adjustment.readings.map(({ correction }) => Math.abs(correction)));
  return suspects.length > 0 ? suspects : [say('form.agree', { most: length(worst) }), ...advice];
}

/** What can be said of the room so far: what is not read yet, how it closes, which reading is suspect. */
function lines({ room, problems, say }: FormContext): readonly string[] {
  if (!room) return [say('form.noRoom')];
  const unread = room.walls.filter(({ state }) => state === 'unread').map(({ id }) => id);
  if (unread.length > 0) return [say('form.unread', { walls: unread.join(', ') })];
  const doesNotClose = problems.some(
    ({ code }) => code === 'misclosure' || code === 'angles' || code === 'triangle',
  );
  if (doesNotClose) return [say('form.doesNotClose')];
  const length = (ticks: Ticks) => printLength(Math.round(ticks), room.system, { feet: true });
  return room.adjustment ? checkLines(room.adjustment, length, say) : [];
}

/** The room as it stands, in a picture and in words, and how much of the file is still wrong. */
export function roomHtml(context: FormContext): string {
  const { room, problems, say } = context;
  const picture = room ? drawLiveRoom(room, say('form.picture', { walls: room.walls.length })) : '';
  const count = tag(
    'p',
    { class: problems.length > 0 ? 'count wrong' : 'count' },
    plain(say('form.problems', { n: problems.length })),
  );
  const first =
    problems.length > 0
      ? tag('button', { type: 'button', id: 'first', 'data-act': 'first' }, plain(say('form.toFirst')))
      : '';
  const told = lines(context).map((line) => tag('p', {}, plain(line)));
  return (
    tag('div', { class: 'picture' }, picture) +
    tag('div', { class: 'told' }, tag('div', { id: 'told', role: 'status' }, ...told, count), first)
  );
}
