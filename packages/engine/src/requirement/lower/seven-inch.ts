import { tableMethod } from './table-method.ts';

/** Michigan State's table for the top 7 in, pH 7 to 4 in whole steps, with a column for organic soil. [MSUSULF] */
export const sevenInch = tableMethod({
  id: 'lower-seven-inch',
  title: 'Michigan State sulfur table for 7 in',
  publication: 'MSUSULF',
  regions: ['Michigan'],
  lowest: 4.0,
  highest: 7.0,
  depth: 0.1778,
  sdLog: { matching: 0.5, foreign: 0.65 },
  domain: 'pH 4 to 7; up to 2.6 times more a unit below pH 6; loam and clay loam print one figure from 6 to 5',
  basis: 'read',
});
