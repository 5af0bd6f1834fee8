import { tableMethod } from './table-method.ts';

/** The Royal Horticultural Society's 135 g/m² on sand and 270 on clay for the top 15 cm. [RHS] */
export const royalHorticultural = tableMethod({
  id: 'lower-royal-horticultural',
  title: 'RHS sulfur rate',
  publication: 'RHS',
  regions: ['United Kingdom', 'England', 'Scotland', 'Wales', 'Northern Ireland'],
  lowest: 6.25,
  highest: 7.25,
  depth: 0.15,
  sdLog: { matching: 0.6, foreign: 0.8 },
  domain: 'printed for 7.0-7.5 to 6.0-6.5, so the drop is 0.5 to 1.5; up to 3.6 times the other tables',
  basis: 'read',
});
