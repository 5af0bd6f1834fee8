import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { schemas } from './schemas.ts';

const read = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');

describe('published JSON Schemas', () => {
  it.each(Object.entries(schemas))('docs/%s says what the code checks', (file, schema) => {
    expect(JSON.parse(read(`docs/${file}`))).toEqual(schema());
  });
  it.each(Object.keys(schemas))('docs/%s is JSON Schema 2020-12', (file) => {
    expect(JSON.parse(read(`docs/${file}`)).$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });
  it('the published garden schema, read back, takes every demo and refuses a pH of 45', () => {
    const schema = z.fromJSONSchema(JSON.parse(read('docs/garden-document.schema.json')));
    for (const file of readdirSync(new URL('../demo/', import.meta.url)).filter((name) => name.endsWith('.yaml')))
      expect(schema.safeParse(parse(read(`demo/${file}`))).error, file).toBeUndefined();
    const bad = {
      garden: 'x',
      places: [{ name: 'y', tests: [{ date: '2026-01-01', by: 'probe', ph: { value: 45 } }] }],
    };
    expect(schema.safeParse(bad).success).toBe(false);
  });
});
