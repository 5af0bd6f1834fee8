import { tableMethod } from './table-method.ts';

/** Kansas State's older rates: 7, 11 or 17 lb/1000 sq ft per pH unit, the lowest in print. [KSU-O] */
export const kansasOlder = tableMethod({
  id: 'lower-kansas-older',
  title: 'Kansas sulfur rates (older)',
  publication: 'KSU-O',
  regions: ['Kansas'],
  lowest: 6.5,
  highest: 8.5,
  sdLog: { matching: 0.6, foreign: 0.7 },
  domain: 'no free lime, although soil of pH 7.3 to 8.5 usually has it; a quarter to a half below the newer rates',
  basis: 'read',
});
