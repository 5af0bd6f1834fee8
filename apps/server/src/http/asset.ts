import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

/** Bytes that are served as they are, squeezed once for each way of squeezing a browser asks for. */
export interface Asset {
  readonly body: Uint8Array<ArrayBuffer>;
  readonly type: string;
  readonly etag: string;
  /** The name changes whenever the content does, so a browser need never ask again. */
  readonly immutable: boolean;
  readonly squeezed: Map<string, Promise<Uint8Array<ArrayBuffer>>>;
}

const brotli = promisify(brotliCompress);
const gz = promisify(gzip);
const squeezers: readonly (readonly [string, (body: Uint8Array) => Promise<Buffer>])[] = [
  ['br', (body) => brotli(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } })],
  ['gzip', (body) => gz(body)],
];
const worthSqueezing = /^(text\/|application\/(json|manifest\+json|wasm|.*javascript)|image\/svg)/;
const leastWorth = 1024;

/** Quoted hash of the content, as a strong ETag (RFC 9110). */
export const etagOf = (body: string | Uint8Array): string =>
  `"${createHash('sha256').update(body).digest('base64url').slice(0, 22)}"`;

export function asset(body: Uint8Array<ArrayBuffer>, type: string, immutable = false): Asset {
  return { body, type, etag: etagOf(body), immutable, squeezed: new Map() };
}

/** Whether the browser already holds this version. `W/` may be put before it by a proxy that squeezes. */
export function holds(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  return ifNoneMatch.split(',').some((each) => each.trim() === '*' || each.trim().replace(/^W\//, '') === etag);
}

/** Answers a request for an asset: 304 when it is held already, squeezed when that is taken and worth it. */
export async function serveAsset(file: Asset, request: Request): Promise<Response> {
  const headers: Record<string, string> = {
    etag: file.etag,
    'cache-control': file.immutable ? 'public, max-age=31536000, immutable' : 'no-cache',
    vary: 'accept-encoding',
  };
  if (holds(request.headers.get('if-none-match') ?? undefined, file.etag))
    return new Response(null, { status: 304, headers });
  headers['content-type'] = file.type;
  const body = await squeezedFor(file, request.headers.get('accept-encoding') ?? '', headers);
  headers['content-length'] = String(body.byteLength);
  return new Response(request.method === 'HEAD' ? null : body, { headers });
}

async function squeezedFor(file: Asset, accepts: string, headers: Record<string, string>) {
  if (file.body.byteLength < leastWorth || !worthSqueezing.test(file.type)) return file.body;
  for (const [name, squeeze] of squeezers) {
    if (!new RegExp(`\\b${name}\\b(?!\\s*;\\s*q=0(\\.0*)?\\s*(,|$))`).test(accepts)) continue;
    headers['content-encoding'] = name;
    const known = file.squeezed.get(name) ?? squeeze(file.body).then((bytes) => new Uint8Array(bytes));
    file.squeezed.set(name, known);
    return known;
  }
  return file.body;
}
