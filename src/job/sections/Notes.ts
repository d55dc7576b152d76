import type { System } from '../../measure/index.ts';
import type { DefaultUsed } from '../Job.ts';
import type { Figures, Reader } from '../shape/Reader.ts';
import type { Path, Trouble } from '../shape/Trouble.ts';

/** What building a job writes down on the way: problems between values, and defaults that nobody wrote. */
export interface Notes {
  readonly system: System;
  readonly troubles: Trouble[];
  readonly defaults: DefaultUsed[];
}

/** A default as it would be written in the job file, in inches and in millimetres where they differ. */
export type DefaultText = string | { readonly inches: string; readonly mm: string };

/** Notes a problem. */
export function trouble(notes: Notes, code: string, path: Path, figures: Figures = {}, atKey = false): void {
  notes.troubles.push({ code, path, figures, atKey });
}

/** Notes a default that was worked out, as it would be written. Every one of them is common practice (mark P) unless told. */
export function noteDefault(notes: Notes, path: Path, value: string | number, mark = 'P'): void {
  notes.defaults.push({ path: path.join('.'), figures: { value, mark } });
}

/** The given value, or the default as its reader reads it; a default that was used is noted. */
export function orDefault<T>(
  notes: Notes,
  given: T | undefined,
  path: Path,
  text: DefaultText,
  reader: Reader<T>,
  mark = 'P',
): T {
  if (given !== undefined) return given;
  const written = typeof text === 'string' ? text : text[notes.system];
  noteDefault(notes, path, written, mark);
  const reading = reader.read(written);
  return reading.ok ? reading.value : reader.standIn;
}
