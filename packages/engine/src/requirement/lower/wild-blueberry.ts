import type { MethodInput } from '../method.ts';
import { names } from '../region.ts';
import { tableMethod } from './table-method.ts';

const REGIONS = ['Maine', 'New Brunswick', 'Nova Scotia', 'Quebec'];

/** Maine's wild blueberry fields: 100 lb/acre per 0.1 pH, at most 1000 a year. [UME254] Fields of that kind only. */
export const wildBlueberry = tableMethod({
  id: 'lower-wild-blueberry',
  title: 'Maine sulfur rule for wild blueberry',
  publication: 'UME254',
  regions: ['Maine'],
  lowest: 4.0,
  highest: 6.0,
  sdLog: { matching: 0.5, foreign: 0.65 },
  domain: 'wild blueberry fields of the north-east; the effect takes two to three years',
  basis: 'read',
  withoutTexture: true,
  speaksOf: ({ targetPh, medium, region, test }: MethodInput) =>
    medium === 'mineral' && targetPh < 5 && names(REGIONS, test.region ?? region ?? ''),
});
