import type { Context } from 'hono';
import { type Api, createApi } from './http/api.ts';
import { requestLog } from './http/log.ts';
import { onError, refuse } from './http/problem-details.ts';
import { createPlanner } from './planned.ts';
import type { Room } from './room.ts';
import { addAbout } from './routes/about.ts';
import { addDay } from './routes/day.ts';
import { addEntries } from './routes/entries.ts';
import { addGardens } from './routes/gardens.ts';
import { addPhotos } from './routes/photos.ts';
import { addPlan } from './routes/plan.ts';
import { addPrint } from './routes/print.ts';
import { addPrintPlants } from './routes/print-plants.ts';
import { addReference } from './routes/reference.ts';
import { addSettings } from './routes/settings.ts';
import { addWeb } from './routes/web.ts';
import { words } from './words.ts';

/** The whole server as a function from request to answer. */
export function createApp(room: Room): Api {
  const api = createApi();
  const planner = createPlanner(room);
  api.use(requestLog(room.log));
  api.onError(onError);
  addAbout(api, room);
  addGardens(api, room);
  addEntries(api, room);
  addSettings(api, room);
  addPlan(api, planner);
  addPhotos(api, room);
  addPrint(api, room, planner);
  addPrintPlants(api, room, planner);
  addDay(api, room);
  addReference(api);
  api.all('/api/*', refuseOther(api));
  addWeb(api, room);
  return api;
}

/**
 * An address that is there, asked in a way it does not answer, says which ways there are (RFC 9110, 15.5.6); any other
 * is not there.
 */
function refuseOther(api: Api): (c: Context) => Response {
  const known = api.routes
    .filter(({ path, method }) => path.startsWith('/api/') && method !== 'ALL')
    .map(({ path, method }) => ({ method, pattern: new RegExp(`^${path.replace(/:\w+/g, '[^/]+')}$`) }));
  return (c) => {
    const { path, method } = c.req;
    const methods = new Set(known.filter(({ pattern }) => pattern.test(path)).map((route) => route.method));
    if (methods.size === 0) return refuse('not-found', words.notFound(path));
    if (methods.has('GET')) methods.add('HEAD');
    const allow = [...methods].join(', ');
    const answer = refuse('not-allowed', words.notAllowed(method, allow));
    answer.headers.set('allow', allow);
    return answer;
  };
}
