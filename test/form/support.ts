import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FieldView, FormView } from '../../src/form/FieldView.ts';
import { treeOf } from '../../src/form/fieldValues.ts';
import { formView } from '../../src/form/formView.ts';
import { readForm } from '../../src/form/makeLiveRoom.ts';
import { floorPath } from '../../src/form/roomNames.ts';

const jobs = join(import.meta.dirname, '..', '..', 'jobs');

/** A demo job as its file stands. */
export const demo = (slug: string): string => readFileSync(join(jobs, slug, 'job.yaml'), 'utf8');

/** What the form shows of a job file. */
export function viewOf(text: string): FormView {
  const tree = treeOf(text);
  return formView(tree, floorPath(tree), readForm(text).problems);
}

/** Every question that the form shows of a job file. */
export function fieldsOf(text: string): readonly FieldView[] {
  return viewOf(text).sections.flatMap(({ items }) =>
    items.flatMap((item) =>
      item.kind === 'field' ? [item.field] : item.list.groups.flatMap(({ fields }) => fields),
    ),
  );
}

/** The question at a path, its keys joined by slashes. */
export function fieldAt(text: string, path: string): FieldView {
  const found = fieldsOf(text).find((field) => field.path.join('/') === path);
  if (!found) throw new Error(`The form has no question at ${path}.`);
  return found;
}
