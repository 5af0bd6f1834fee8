import { tableMethod } from './table-method.ts';

/** Michigan State University's table to pH 4.5 for sand, loam and clay, in a second-hand copy. [MSU-R] */
export const michiganState = tableMethod({
  id: 'lower-michigan-state',
  title: 'Michigan State sulfur table to pH 4.5',
  publication: 'MSU-R',
  regions: ['Michigan'],
  lowest: 4.5,
  highest: 7.0,
  sdLog: { matching: 0.4, foreign: 0.6 },
  domain: 'pH 4.5 to 7; linear within 6 %; agrees with the other acid-side tables within 35 %',
  basis: 'read',
});
