import { tableMethod } from './table-method.ts';

/** Clemson's garden table: 0.1 lb/10 sq ft per half pH unit. [HGIC, memory] */
export const clemson = tableMethod({
  id: 'lower-clemson',
  title: 'Clemson sulfur table',
  publication: 'HGIC',
  regions: ['South Carolina'],
  lowest: 4.5,
  highest: 8.0,
  sdLog: { matching: 0.55, foreign: 0.75 },
  domain: 'one column, read as loam',
  basis: 'memory',
});
