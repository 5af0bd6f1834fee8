/** A name as it is compared: no capitals, accents, blanks or signs but those that tell names apart. */
export const nameKey = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9%+:]/g, '');

/** A unit as it is compared. Case is kept where it tells units apart (`M` is a thousand square feet). */
export const unitKey = (text: string): string =>
  text
    .replace(/[µμ]/g, 'u')
    .normalize('NFKD')
    .replace(/[\u207b\u2212]/g, '-')
    .replace(/[\s^·*]/g, '')
    .replace(/\.$/, '')
    .toLowerCase();

/** A title as it is found again in the next file of the same sender. */
export const titleKey = (text: string): string => text.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();
