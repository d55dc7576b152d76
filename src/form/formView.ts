import type { Problem } from '../job/Problem.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { valueAt } from '../job/shape/valueAt.ts';
import type { AskedField, AskedSection } from '../sheets/measuring/AskedField.ts';
import { askedFields } from '../sheets/measuring/askedFields.ts';
import type { FieldView, FormView, GroupView, ItemView, ListView, SectionView } from './FieldView.ts';
import { fieldValues } from './fieldValues.ts';
import { placeInForm } from './placeInForm.ts';
import { keysAt, type RoomNames, roomNames } from './roomNames.ts';
import { fullForm } from './shortForms.ts';

/** What the questions are put about. */
interface Asking {
  readonly tree: unknown;
  readonly floor: Path;
  readonly names: RoomNames;
}

const NONE: readonly Problem[] = [];
const isPlaceholder = (key: string): boolean => /^<\w+>$/.test(key);
const isFrom = (key: string): boolean => key.startsWith('from <');

/** The path of a question in this file: its floor is that one of several, where there are several. */
const inFile = (path: readonly string[], { floor }: Asking): Path =>
  path[0] === 'floor' ? [...floor, ...path.slice(1)] : path;

/** What a thing of a list is in full, wherever it is written shortly. */
function thingAt({ tree }: Asking, path: Path): unknown {
  const value = valueAt(tree, path);
  return fullForm(path, value) ?? value;
}

function namesFor(asked: AskedField, above: Path, { tree, names }: Asking): readonly string[] {
  const key = asked.path.at(-1)!;
  if (key === 'from <corner>') {
    const wall = String(valueAt(tree, [...above, 'in']) ?? '').replace(/ *- */, '-');
    const ends = wall.split('-').filter((name) => names.corners.includes(name));
    return ends.length === 2 ? ends : names.corners;
  }
  return key === 'from <wall>' || asked.kind === 'wall' || asked.kind === 'walls' ? names.walls : [];
}

/** A field from the value that stands there. */
function field(
  asked: AskedField,
  path: Path,
  value: unknown,
  names: readonly string[],
  from?: string,
): FieldView {
  const values = fieldValues(value, asked.kind);
  return {
    id: path.join('/').replace(/\s+/g, '_'),
    asked,
    path,
    values: values ?? [],
    ...(values ? {} : { byHand: JSON.stringify(value) }),
    ...(from === undefined ? {} : { from }),
    names,
    problems: NONE,
  };
}

/** How many distances from something a thing has at the least: two place an obstacle, one a doorway. */
const leastFrom: Readonly<Record<string, number>> = {
  obstacles: 2,
  doorways: 1,
  cracks: 2,
  hollow: 2,
  'flatness grid': 2,
};

/** The distances `from` something that stand in a map, and empty ones for those that it lacks. */
function fromFields(asked: AskedField, above: Path, map: unknown, asking: Asking): readonly FieldView[] {
  const names = namesFor(asked, above, asking);
  const given = keysAt(map, []).filter((key) => /^from +\S/.test(key));
  const used = given.map((key) => key.replace(/^from +/, ''));
  const most = leastFrom[String(above.at(-2))] ?? leastFrom[String(above.at(-1))] ?? given.length + 1;
  const free = names.filter((name) => !used.includes(name)).slice(0, Math.max(0, most - given.length));
  return [...used, ...free].map((name, i) => {
    const key = given[i] ?? `from ${name}`;
    const made = field(asked, [...above, key], valueAt(map, [key]), names, name);
    return { ...made, id: `${above.join('/').replace(/\s+/g, '_')}/from/${i}` };
  });
}

/** The fields of one question in a map; a question about distances `from` something has several. */
function fieldsIn(asked: AskedField, above: Path, map: unknown, asking: Asking): readonly FieldView[] {
  const key = asked.path.at(-1)!;
  if (isFrom(key)) return fromFields(asked, above, map, asking);
  return [field(asked, [...above, key], valueAt(map, [key]), namesFor(asked, above, asking))];
}

/** One thing of a list: a wall, a doorway, or a single value under a name. */
function group(asked: readonly AskedField[], path: Path, asking: Asking): GroupView {
  const thing = thingAt(asking, path);
  const depth = asked[0]!.path.findIndex(isPlaceholder);
  const fields = asked.flatMap((one) => {
    const rest = one.path.slice(depth + 1);
    if (rest.length === 0) {
      const value = typeof thing === 'object' && thing !== null && 'read' in thing ? thing.read : thing;
      const blank = typeof value === 'object' && value !== null && Object.keys(value).length === 0;
      return [field(one, path, blank ? undefined : value, namesFor(one, path, asking))];
    }
    const above = [...path, ...rest.slice(0, -1)];
    return fieldsIn(one, above, rest.length === 1 ? thing : valueAt(thing, rest.slice(0, -1)), asking);
  });
  return { path, name: String(path.at(-1)), fields, problems: NONE };
}

/** Names that the things of a list bear by the room, in the order walked; undefined where one chooses them oneself. */
function givenNames(placeholder: string, { names }: Asking): readonly string[] | undefined {
  if (placeholder === '<wall>') return names.walls;
  if (placeholder === '<corner>') return names.corners;
  return placeholder === '<diagonal>' ? names.diagonals : undefined;
}

function list(asked: readonly AskedField[], asking: Asking): ListView {
  const template = asked[0]!.path;
  const depth = template.findIndex(isPlaceholder);
  const path = inFile(template.slice(0, depth), asking);
  const here = keysAt(asking.tree, path);
  const given = givenNames(template[depth]!, asking);
  const turned = (name: string) => name.split('-').reverse().join('-');
  return {
    what: String(path.at(-1)),
    path,
    ownNames: given === undefined,
    groups: here.map((name) => group(asked, [...path, name], asking)),
    toAdd:
      template[depth] === '<wall>'
        ? []
        : (given ?? []).filter((name) => !here.includes(name) && !here.includes(turned(name))),
    problems: NONE,
  };
}

const listOf = ({ path }: AskedField): string => path.slice(0, path.findIndex(isPlaceholder)).join('/');

function items(asked: readonly AskedField[], asking: Asking): readonly ItemView[] {
  const done = new Set<string>();
  return asked.flatMap((one): readonly ItemView[] => {
    if (!one.path.some(isPlaceholder)) {
      const above = inFile(one.path.slice(0, -1), asking);
      return fieldsIn(one, above, thingAt(asking, above), asking).map((view) => ({
        kind: 'field',
        field: view,
      }));
    }
    if (done.has(listOf(one))) return [];
    done.add(listOf(one));
    const same = asked.filter((other) => other.path.some(isPlaceholder) && listOf(other) === listOf(one));
    return [{ kind: 'list', list: list(same, asking) }];
  });
}

/**
 * All that the form shows of a job file: every question of the measuring sheet with its answer, and each problem at the question it
 * belongs to. `tree` holds the file's values; `floor` is the path of the floor that is shown.
 */
export function formView(tree: unknown, floor: Path, problems: readonly Problem[]): FormView {
  const asking: Asking = { tree, floor, names: roomNames(tree, floor) };
  const sections = [...new Set(askedFields.map(({ section }) => section))];
  const blank = sections.map((section: AskedSection): SectionView => {
    const asked = askedFields.filter((one) => one.section === section);
    return { section, items: items(asked, asking), problems: NONE };
  });
  return placeInForm(blank, problems);
}
