import type { Problem } from '../job/Problem.ts';
import { placeTrouble } from '../job/yaml/placeTrouble.ts';
import { readYaml } from '../job/yaml/readYaml.ts';

/** Gives a problem its file, and its line and column where only its path is known. */
export function placeProblem(problem: Problem, text: string, file: string): Problem {
  if (problem.line !== undefined) return { ...problem, file };
  const yaml = readYaml(text);
  const { line, column } = placeTrouble({ ...problem, atKey: true }, yaml, text, file);
  return { ...problem, file, line, column };
}
