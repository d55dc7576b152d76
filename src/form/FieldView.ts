import type { Problem } from '../job/Problem.ts';
import type { Path } from '../job/shape/Trouble.ts';
import type { AskedField, AskedSection } from '../sheets/measuring/AskedField.ts';

/** One question with its answer as it stands in the job file. */
export interface FieldView {
  /** Unique in the form; stays the same while the answer changes. */
  readonly id: string;
  readonly asked: AskedField;
  /** Where the answer stands, or will. */
  readonly path: Path;
  /** Its parts as written: readings of a list, kind and size of a side, two walls. Empty where nothing is written. */
  readonly values: readonly string[];
  /** Where the file has more behind the key than the form can show, that text; the form leaves it alone. */
  readonly byHand?: string;
  /** For a distance `from` something: from what. */
  readonly from?: string;
  /** Names that may be chosen: walls, corners. */
  readonly names: readonly string[];
  readonly problems: readonly Problem[];
}

/** Several questions about one thing: a wall, a doorway, a layer. */
export interface GroupView {
  readonly path: Path;
  readonly name: string;
  readonly fields: readonly FieldView[];
  readonly problems: readonly Problem[];
}

/** All things of a kind: walls, doorways, layers. */
export interface ListView {
  /** The last key of its path: `walls`, `doorways`, `removed`. */
  readonly what: string;
  readonly path: Path;
  /** Whether its things bear names of one's own, which can be changed. */
  readonly ownNames: boolean;
  readonly groups: readonly GroupView[];
  /** Names of things that may be added, where the names are given: diagonals, corners. */
  readonly toAdd: readonly string[];
  readonly problems: readonly Problem[];
}

export type ItemView =
  | { readonly kind: 'field'; readonly field: FieldView }
  | { readonly kind: 'list'; readonly list: ListView };

export interface SectionView {
  readonly section: AskedSection;
  readonly items: readonly ItemView[];
  /** All problems of its parts. */
  readonly problems: readonly Problem[];
}

export interface FormView {
  readonly sections: readonly SectionView[];
  /** Problems of what the form does not ask: they are told with their line in the file. */
  readonly elsewhere: readonly Problem[];
}
