import { tableMethod } from './table-method.ts';

/**
 * Tennessee's rule for blueberry: 2.0 lb/1000 sq ft per 0.1 pH above 5.5 on silt loam, a third more on clay, a third
 * less on sand. [UTK] Printed for the top 3 in; read as 15 cm, which is the smaller dose of the two readings.
 */
export const tennessee = tableMethod({
  id: 'lower-tennessee',
  title: 'Tennessee sulfur rule for blueberry',
  publication: 'UTK',
  regions: ['Tennessee'],
  lowest: 5.5,
  highest: 7.2,
  sdLog: { matching: 0.4, foreign: 0.6 },
  domain: 'down to pH 5.5; worked into the top 3 in, where the acid acts twice as strongly if it stays there',
  basis: 'read',
});
