import { describe, expect, test } from 'vitest';
import { jsonSchema } from '../../src/job/jsonSchema.ts';
import { type JsonSchema, keysAt, schemasAt } from '../../src/job/shape/schemasAt.ts';

const schema = jsonSchema();

function everyNode(node: unknown): readonly JsonSchema[] {
  if (typeof node !== 'object' || node === null) return [];
  return [node as JsonSchema, ...Object.values(node).flatMap(everyNode)];
}

describe('the JSON Schema of the job file', () => {
  test('is of draft 2020-12 and asks for what has no default', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.required).toEqual(['title', 'revision', 'tile', 'joint']);
  });

  test('describes every key, so that an editor can say what it is for', () => {
    const keys = everyNode(schema).flatMap(({ properties }) =>
      Object.entries((properties ?? {}) as Record<string, JsonSchema>),
    );
    const silent = keys.filter(([, node]) => typeof node.description !== 'string').map(([key]) => key);
    expect(keys.length).toBeGreaterThan(80);
    expect(silent).toEqual([]);
  });

  test('allows no other keys but names, and keys that name a wall', () => {
    expect(schema.additionalProperties).toBe(false);
    expect(keysAt(schema, ['floor', 'obstacles', 'pipe'])).toContain('from A-B');
    expect(keysAt(schema, ['floor', 'walls', 'A-B'])).toEqual(
      expect.arrayContaining(['read', 'gap max', 'touch']),
    );
  });

  test('completes words that are chosen from a few', () => {
    expect(schemasAt(schema, ['floor', 'exposure'])[0]?.enum).toEqual(['dry', 'wet', 'sun', 'outside']);
    expect(schemasAt(schema, ['print', 'crew']).map((node) => node.enum ?? node.type)).toEqual([
      ['en', 'es', 'pt'],
      'array',
    ]);
  });
});
