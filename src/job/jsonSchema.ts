import * as z from 'zod';
import { jobSchema } from './jobSchema.ts';
import type { JsonSchema } from './shape/schemasAt.ts';

const schema = z.toJSONSchema(jobSchema, { io: 'input', unrepresentable: 'any' }) as JsonSchema;

/** The JSON Schema (draft 2020-12) of the job file, by which an editor completes and checks it. */
export function jsonSchema(): JsonSchema {
  return schema;
}
