import { tableMethod } from './table-method.ts';

/** Ontario's blueberry rates: 350, 750 or 1100 kg S/ha per pH unit; no column for clay. [OMAFRA] */
export const ontario = tableMethod({
  id: 'lower-ontario',
  title: 'Ontario sulfur table for blueberry',
  publication: 'OMAFRA',
  regions: ['Ontario'],
  lowest: 4.2,
  highest: 7.0,
  sdLog: { matching: 0.4, foreign: 0.6 },
  domain: 'sand to loam; difficult above pH 7; agrees with the other acid-side tables within 35 %',
  basis: 'read',
});
