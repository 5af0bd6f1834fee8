import { tableMethod } from './table-method.ts';

/** The national extension service's rule for blueberry: 1 or 2 lb/100 sq ft per pH unit. [EXT] */
export const extensionBlueberry = tableMethod({
  id: 'lower-extension-blueberry',
  title: 'US extension sulfur rule for blueberry',
  publication: 'EXT',
  regions: ['United States'],
  lowest: 4.0,
  highest: 7.0,
  sdLog: { matching: 0.5, foreign: 0.6 },
  domain: 'two classes of soil only: sandy, or heavy or over 2 % organic matter',
  basis: 'read',
});
