import { tableMethod } from './table-method.ts';

/** North Dakota's table to pH 6.5 for trees with chlorosis; the western table in pounds per 100 square feet. [NDSUIRON] */
export const northDakota = tableMethod({
  id: 'lower-north-dakota',
  title: 'North Dakota sulfur table to pH 6.5',
  publication: 'NDSUIRON',
  regions: ['North Dakota', 'South Dakota'],
  lowest: 6.5,
  highest: 8.0,
  sdLog: { matching: 0.55, foreign: 0.7 },
  domain: 'soil without free lime; the same table as the western one, so low near neutral and steep above 7.5',
  basis: 'read',
});
