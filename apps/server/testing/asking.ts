import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { expect } from 'vitest';

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  // biome-ignore lint/suspicious/noExplicitAny: tests look into answers of every shape, which the description has checked
  readonly body: any;
}

export type Asked = (method: string, path: string, body?: unknown, headers?: Record<string, string>) => Promise<Answer>;

interface Described {
  readonly paths: Record<string, Record<string, { readonly responses: Record<string, { readonly content?: object }> }>>;
}

/**
 * Sends requests and fails when an answer is not what `/api/openapi.json` promises for that route: a status that is not
 * listed, another content type, or a body that does not fit its schema.
 */
export function asking(address: string): Asked {
  let described: Promise<[Described, Ajv2020]> | undefined;
  return async (method, path, body, headers = {}) => {
    described ??= read(address);
    const [description, ajv] = await described;
    const raw = body instanceof Uint8Array || typeof body === 'string';
    const response = await fetch(address + path, {
      method,
      headers: { ...(body === undefined || raw ? {} : { 'content-type': 'application/json' }), ...headers },
      ...(body === undefined ? {} : { body: raw ? body : JSON.stringify(body) }),
    });
    const type = (response.headers.get('content-type') ?? '').split(';')[0] ?? '';
    const bytes = new Uint8Array(await response.arrayBuffer());
    const text = new TextDecoder().decode(bytes);
    const parsed = /json$/.test(type) ? JSON.parse(text) : /^text\//.test(type) ? text : bytes;
    check(description, ajv, method, path.split('?')[0] ?? '', response.status, type, parsed);
    return { status: response.status, headers: response.headers, body: parsed };
  };
}

/** Compiling the schemas takes longer than most tests, and every server of one build describes itself alike. */
const known = new Map<string, [Described, Ajv2020]>();

async function read(address: string): Promise<[Described, Ajv2020]> {
  const text = await (await fetch(`${address}/api/openapi.json`)).text();
  const before = known.get(text);
  if (before !== undefined) return before;
  const description = JSON.parse(text) as Described;
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  addFormats.default(ajv);
  // Said by the schemas for people; the patterns beside them are what is checked.
  for (const said of ['lowercase', 'base64', 'binary']) ajv.addFormat(said, true);
  ajv.addSchema(description, 'api');
  known.set(text, [description, ajv]);
  return [description, ajv];
}

const pointer = (...parts: string[]) => parts.map((part) => part.replaceAll('~', '~0').replaceAll('/', '~1')).join('/');

const validators = new WeakMap<Ajv2020, Map<string, ValidateFunction>>();

function compiled(ajv: Ajv2020, at: string): ValidateFunction {
  const ready = validators.get(ajv) ?? new Map<string, ValidateFunction>();
  validators.set(ajv, ready);
  const validate = ready.get(at) ?? ajv.compile({ $ref: `api#/${at}` });
  ready.set(at, validate);
  return validate;
}

function check(
  { paths }: Described,
  ajv: Ajv2020,
  method: string,
  path: string,
  status: number,
  type: string,
  body: unknown,
): void {
  const template = Object.keys(paths)
    .filter((each) => new RegExp(`^${each.replace(/\{\w+\}/g, '[^/]+')}$`).test(path))
    .sort((a, b) => a.split('{').length - b.split('{').length)[0];
  const responses = paths[template ?? '']?.[method.toLowerCase()]?.responses;
  // What no route answers must be refused.
  if (template === undefined || responses === undefined) {
    expect([path, status]).toEqual([path, expect.toSatisfy((value: number) => value === 404 || value === 405)]);
    return;
  }
  const response = responses[status];
  expect(
    response,
    `${method} ${template} does not describe the status ${status}: ${JSON.stringify(body)}`,
  ).toBeDefined();
  const content = (response?.content ?? {}) as Record<string, unknown>;
  if (Object.keys(content).length === 0) return;
  expect(Object.keys(content), `${method} ${template} ${status}`).toContain(type);
  if (!/json$/.test(type)) return;
  const at = pointer('paths', template, method.toLowerCase(), 'responses', String(status), 'content', type, 'schema');
  const validate = compiled(ajv, at);
  const fits = validate(body);
  expect(
    fits ? [] : validate.errors,
    `${method} ${template} ${status}: ${JSON.stringify(body)?.slice(0, 300)}`,
  ).toEqual([]);
}
