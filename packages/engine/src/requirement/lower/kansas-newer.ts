import { tableMethod } from './table-method.ts';

/** Kansas State's newer rates from 7.5 to 6.5 on soil without free lime; the middle of each printed range. [KSU-N] */
export const kansasNewer = tableMethod({
  id: 'lower-kansas-newer',
  title: 'Kansas sulfur rates (newer)',
  publication: 'KSU-N',
  regions: ['Kansas'],
  lowest: 6.5,
  highest: 7.5,
  sdLog: { matching: 0.45, foreign: 0.6 },
  domain: 'pH 7.5 to 6.5 without free lime',
  basis: 'read',
});
