import type { IncomingMessage, ServerResponse } from 'node:http';
import { hostname, networkInterfaces } from 'node:os';
import { words } from '../words.ts';
import type { ProblemKind } from './problem-details.ts';

/** Nothing runs or loads but what this server itself serves; pictures may also be made in the page. */
const policy = [
  "default-src 'none'",
  // The solver behind the placing of plants is WebAssembly.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const securityHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': policy,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  // The address of a calendar feed is a secret, so no address is told to other sites.
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), geolocation=(), microphone=(), payment=(), usb=()',
};

const loopback = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Whether a listening address is reached from this computer only. */
export const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || /^127\.\d+\.\d+\.\d+$/.test(host);

/** Names this server answers to: its own addresses, and on a network also this computer's name and those given. */
export function hostsFor(host: string, further: readonly string[]): ReadonlySet<string> {
  const known = new Set([...loopback, ...further.map((name) => name.toLowerCase())]);
  const bare = host.includes(':') ? `[${host}]` : host;
  known.add(bare.toLowerCase());
  if (isLoopback(host)) return known;
  const name = hostname().toLowerCase();
  known.add(name).add(`${name}.local`);
  for (const each of Object.values(networkInterfaces()).flat())
    if (each !== undefined) known.add(each.family === 'IPv6' ? `[${each.address.toLowerCase()}]` : each.address);
  return known;
}

const nameOf = (host: string): string => host.toLowerCase().replace(/:\d+$/, '');

const headers = Object.entries(securityHeaders);

/** Before anything else, so that no answer of any kind goes without them. */
export function setSecurityHeaders(res: ServerResponse): void {
  for (const [name, value] of headers) res.setHeader(name, value);
}

/**
 * Answers only to names of this server, so that a foreign name pointed at this computer (DNS rebinding) reads nothing;
 * and changes nothing at the wish of another site's page.
 *
 * @param hosts names without port, see `hostsFor`
 * @returns why the request is refused, or undefined when it may pass
 */
export function whyRefused(req: IncomingMessage, hosts: ReadonlySet<string>): [ProblemKind, string] | undefined {
  const { host = '', origin } = req.headers;
  if (!hosts.has(nameOf(host))) return ['wrong-host', words.wrongHost];
  if (req.method === 'GET' || req.method === 'HEAD') return undefined;
  return sameSite(origin, host, req.headers['sec-fetch-site']) ? undefined : ['other-site', words.otherSite];
}

/** Programs send no `Origin` and are let through; a browser always does when it changes something. */
function sameSite(origin: string | undefined, host: string, fetchSite: string | string[] | undefined): boolean {
  if (fetchSite !== undefined && fetchSite !== 'same-origin' && fetchSite !== 'none') return false;
  if (origin === undefined) return true;
  return URL.canParse(origin) && new URL(origin).host === host.toLowerCase();
}
