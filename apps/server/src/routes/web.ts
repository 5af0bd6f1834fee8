import type { Api } from '../http/api.ts';
import { asset, serveAsset } from '../http/asset.ts';
import { refuse } from '../http/problem-details.ts';
import { webFile } from '../http/web-files.ts';
import type { Room } from '../room.ts';
import { words } from '../words.ts';

/** The built pages. Without them one sentence says what to do. */
export function addWeb(api: Api, { webFiles }: Room): void {
  const unbuilt = asset(new TextEncoder().encode(`${words.noWeb}\n`), 'text/plain; charset=utf-8');
  api.get('*', (c) => {
    const found = webFiles.size === 0 && c.req.path === '/' ? unbuilt : webFile(webFiles, c.req.path);
    return found === undefined ? refuse('not-found', words.notFound(c.req.path)) : serveAsset(found, c.req.raw);
  });
  api.notFound((c) => refuse('not-found', words.notFound(c.req.path)));
}
