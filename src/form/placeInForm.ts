import type { Problem } from '../job/Problem.ts';
import { isWithin } from '../job/shape/readShape.ts';
import type { Path } from '../job/shape/Trouble.ts';
import type { FieldView, FormView, GroupView, ItemView, ListView, SectionView } from './FieldView.ts';

const fieldsOf = (item: ItemView): readonly FieldView[] =>
  item.kind === 'field' ? [item.field] : item.list.groups.flatMap(({ fields }) => fields);

/** Paths at which the form can tell a problem. */
function anchorsOf(sections: readonly SectionView[]): readonly Path[] {
  return sections.flatMap(({ items }) =>
    items.flatMap((item) => [
      ...(item.kind === 'list' ? [item.list.path, ...item.list.groups.map(({ path }) => path)] : []),
      ...fieldsOf(item).map(({ path }) => path),
    ]),
  );
}

const nameOf = (path: Path): string => JSON.stringify(path.map(String));

/** The deepest place that the problem lies in; where there is none, the first one that lies in what the problem is about. */
function anchorOf({ path }: Problem, anchors: readonly Path[]): Path | undefined {
  if (path.length === 0) return undefined;
  const around = anchors.filter((anchor) => isWithin(path, anchor));
  if (around.length > 0) return around.reduce((a, b) => (b.length > a.length ? b : a));
  return anchors.find((anchor) => isWithin(anchor, path));
}

type At = (path: Path) => readonly Problem[];

/** Each place tells a problem once: the thing itself leaves to its only question what stands at the same path. */
function groupWith(group: GroupView, at: At): GroupView {
  const fields = group.fields.map((field) => ({ ...field, problems: at(field.path) }));
  const told = fields.some(({ path }) => nameOf(path) === nameOf(group.path));
  return { ...group, fields, problems: told ? [] : at(group.path) };
}

function itemWith(item: ItemView, at: At): ItemView {
  if (item.kind === 'field') return { ...item, field: { ...item.field, problems: at(item.field.path) } };
  const groups = item.list.groups.map((group) => groupWith(group, at));
  const list: ListView = { ...item.list, groups, problems: at(item.list.path) };
  return { ...item, list };
}

const problemsIn = (item: ItemView): readonly Problem[] =>
  item.kind === 'field'
    ? item.field.problems
    : [
        ...item.list.problems,
        ...item.list.groups.flatMap((group) => [
          ...group.problems,
          ...group.fields.flatMap(({ problems }) => problems),
        ]),
      ];

/** Puts each problem at the question it belongs to, or at the thing or the list; what belongs to none of them is told apart. */
export function placeInForm(sections: readonly SectionView[], problems: readonly Problem[]): FormView {
  const anchors = anchorsOf(sections);
  const placed = problems.map((problem) => ({ problem, anchor: anchorOf(problem, anchors) }));
  const byPlace = new Map<string, Problem[]>();
  for (const { problem, anchor } of placed) {
    if (!anchor) continue;
    byPlace.set(nameOf(anchor), [...(byPlace.get(nameOf(anchor)) ?? []), problem]);
  }
  const at: At = (path) => byPlace.get(nameOf(path)) ?? [];
  return {
    sections: sections.map((section) => {
      const items = section.items.map((item) => itemWith(item, at));
      return { ...section, items, problems: items.flatMap(problemsIn) };
    }),
    elsewhere: placed.filter(({ anchor }) => !anchor).map(({ problem }) => problem),
  };
}
