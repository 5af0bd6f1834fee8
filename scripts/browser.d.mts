/** Path of a Chromium, installed when there is none; undefined, with the reason said, when none can be had. */
export function browser(): Promise<string | undefined>;
