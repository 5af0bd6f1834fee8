import type { MethodInput } from '../method.ts';
import { names } from '../region.ts';
import { textureOf } from './below.ts';
import { tableMethod } from './table-method.ts';

const REGIONS = ['Quebec', 'Wisconsin', 'Massachusetts', 'New Jersey', 'British Columbia'];

/** Cranberry beds on sand: 1120 kg S/ha per pH unit. [JAM23] Beds of that kind only. */
export const cranberry = tableMethod({
  id: 'lower-cranberry',
  title: 'Sulfur rate for cranberry beds',
  publication: 'JAM23',
  regions: ['Quebec'],
  lowest: 4.0,
  highest: 6.0,
  sdLog: { matching: 0.5, foreign: 0.65 },
  domain: 'cranberry beds on bog sand in cranberry country',
  basis: 'read',
  withoutTexture: true,
  speaksOf: (input: MethodInput) =>
    input.medium === 'mineral' &&
    input.targetPh < 5.5 &&
    (textureOf(input) === 'sand' || textureOf(input) === 'loamy sand') &&
    names(REGIONS, input.test.region ?? input.region ?? ''),
});
