import { tableMethod } from './table-method.ts';

/** The western table to pH 6.5, carbonate-free soil. [WFH, memory] Its steep rise above 7.5 is the trace of free lime. */
export const toSixAndAHalf = tableMethod({
  id: 'lower-to-six-and-a-half',
  title: 'western sulfur table to pH 6.5',
  publication: 'WFH',
  regions: ['California', 'Arizona', 'Nevada'],
  lowest: 6.5,
  highest: 8.5,
  depth: 0.1651,
  sdLog: { matching: 0.6, foreign: 0.75 },
  domain: 'carbonate-free soil, 6 to 7 in; near neutral 2 to 3 times below all others, and steep above 7.5',
  basis: 'memory',
});
