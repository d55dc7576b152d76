import { isCollection } from 'yaml';
import type { Problem } from './Problem.ts';
import type { Path } from './shape/Trouble.ts';
import { valueAt } from './shape/valueAt.ts';
import { nodeAt } from './yaml/nodeAt.ts';
import { placeTrouble } from './yaml/placeTrouble.ts';
import { readYaml, type YamlText } from './yaml/readYaml.ts';

/** Later steps begin a path with the surface's name; in the file a surface of several stands under `floors`. */
function pathInFile(path: Path, file: unknown): Path {
  const [first] = path;
  const inFloors = first !== undefined && valueAt(file, [first]) === undefined;
  return inFloors && valueAt(file, ['floors', first]) !== undefined ? ['floors', ...path] : path;
}

/** Keys or a list on lines of their own begin below their key, which is where one looks for them. */
function isBlock(node: unknown): boolean {
  return isCollection(node) && node.flow !== true;
}

function placeOne(problem: Problem, yaml: YamlText, text: string, file: string): Problem {
  const path = pathInFile(problem.path, yaml.value);
  const { node, complete } = yaml.doc ? nodeAt(yaml.doc, path) : { node: undefined, complete: false };
  const trouble = { code: problem.code, path, figures: problem.figures, atKey: !complete || isBlock(node) };
  const { line, column } = placeTrouble(trouble, yaml, text, file);
  return { ...problem, path, file, line: line ?? 1, column: column ?? 1 };
}

/**
 * Gives problems that a later step found, such as readings that do not meet, their file, line and column in the job file.
 * Problems that have a line already stay as they are.
 *
 * @example
 * placeProblems([{ code: 'crossing', path: ['floor', 'gap'], found: '', figures: {} }], 'floor:\n  gap: 0 in', 'a')[0].line //=> 2
 */
export function placeProblems(problems: readonly Problem[], text: string, file: string): readonly Problem[] {
  const yaml = readYaml(text);
  return problems.map((problem) =>
    problem.line === undefined ? placeOne(problem, yaml, text, file) : problem,
  );
}
