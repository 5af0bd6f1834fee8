/** Writes `sorrel.mjs` and the pieces it loads to `dist/`, or to the folder named. */
export function buildCli(outdir?: string): Promise<void>;
