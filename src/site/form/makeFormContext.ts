import type { FieldView, FormView } from '../../form/FieldView.ts';
import { treeOf } from '../../form/fieldValues.ts';
import { formView } from '../../form/formView.ts';
import { makeLiveRoom, readForm } from '../../form/makeLiveRoom.ts';
import { floorPath } from '../../form/roomNames.ts';
import type { Problem } from '../../job/Problem.ts';
import type { Words } from '../makeWords.ts';
import { problemLine } from '../problemLine.ts';
import type { FormContext, FormState } from './FormContext.ts';

const fieldsOf = (view: FormView): readonly FieldView[] =>
  view.sections.flatMap(({ items }) =>
    items.flatMap((item) =>
      item.kind === 'field' ? [item.field] : item.list.groups.flatMap(({ fields }) => fields),
    ),
  );

/** The sentences of a problem; the form shows its place, so that file and line are only told where it does not. */
function sentences(problem: Problem, withLine: boolean, words: Words, lang: string): string {
  const { file, line, column, ...rest } = problem;
  return problemLine(withLine ? { ...rest, file, line, column } : rest, words, lang);
}

/** All that follows from a state: its values, its questions, its problems, its room. */
export function makeFormContext(state: FormState, words: Words): FormContext {
  const tree = treeOf(state.text);
  const floor = floorPath(tree, state.floor);
  const reading = readForm(state.text);
  const view = formView(tree, floor, reading.problems);
  return {
    state,
    say: words.say(state.lang),
    problem: (problem, withLine) => sentences(problem, withLine, words, state.lang),
    tree,
    floor,
    view,
    problems: reading.problems,
    room: makeLiveRoom(tree, floor, reading),
    fields: new Map(fieldsOf(view).map((field) => [field.id, field])),
  };
}
