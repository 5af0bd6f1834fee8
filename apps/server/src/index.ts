export { optionsFrom, type ServerOptions } from './options.ts';
export { type Instead, type RunningServer, startServer } from './start-server.ts';
