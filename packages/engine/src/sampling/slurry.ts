/** Strength of the calcium chloride that is stirred into a water slurry, as much of it as there is water, M (UF_PH). */
export const SALT_ADDED = 0.02;

/** Cups of one mix whose pH lies farther apart than this were not stirred or read alike (SORREL). */
export const CUPS_AGREE = 0.3;
