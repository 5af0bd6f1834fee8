import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { page, sourcesPage } from './sources-page.ts';

it('has a page of sources as the tables cite them now (else run `npm run sources`)', async () => {
  expect(readFileSync(page, 'utf8')).toBe(await sourcesPage());
});
