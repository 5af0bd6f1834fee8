import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { page, sourcesPage } from './sources-page.ts';

it('has a page of sources as the tables cite them now (else run `npm run sources`)', async () => {
  const [stands, wanted] = [readFileSync(page, 'utf8').split('\n'), (await sourcesPage()).split('\n')];
  expect(wanted.filter((line) => !stands.includes(line))).toEqual([]);
  expect(stands.filter((line) => !wanted.includes(line))).toEqual([]);
});
