import * as z from 'zod';
import type { Reader } from './Reader.ts';
import { unread } from './Unread.ts';

/** The schema of one kind of value, as the file has it and as the program uses it. */
export type Leaf<T> = z.ZodType<T, unknown>;

/** Put in the place of a value whose lack is already told; every leaf takes it and gives its stand-in. */
export const TOLD = Symbol('told');

/**
 * Schema of a single value. A value that cannot be read is marked, not refused, so that one slip never hides another;
 * only a map or a list in its place is refused.
 */
export function leaf<T>(reader: Reader<T>, description: string): Leaf<T> {
  const read = (value: unknown): T => {
    if (value === undefined || value === null) return unread('missing', {}, reader.standIn) as T;
    if (value === TOLD) return reader.standIn;
    const reading = reader.read(value);
    return reading.ok ? reading.value : (unread(reading.code, reading.figures ?? {}, reader.standIn) as T);
  };
  return z
    .custom<unknown>((value) => typeof value !== 'object' || value === null)
    .meta({ ...reader.json, description })
    .transform(read);
}

/** Schema of one value or a list of them; always a list afterwards. */
export function listOf<T>(reader: Reader<T>, description: string): z.ZodType<readonly T[], unknown> {
  const one = leaf(reader, description);
  return z
    .union([one.transform((value): readonly T[] => [value]), z.array(one).min(1)])
    .meta({ description }) as z.ZodType<readonly T[], unknown>;
}
