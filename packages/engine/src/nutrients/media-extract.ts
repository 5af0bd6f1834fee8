const MEDIA: ReadonlySet<string> = new Set(['sme', 'dtpa-sme']);

/** Whether an extractant is for potting mixes. */
export const isMediaExtract = (extractant: string): boolean => MEDIA.has(extractant);
