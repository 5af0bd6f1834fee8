import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { demo, makeIds, png, value } from '../../contract/kit.ts';
import { entriesFromDocument, openStore } from '../index.ts';
import { gardenExportJsonSchema } from './garden-export.ts';

describe('the published schema of the export', () => {
  it('takes what is written, by the judgement of a validator of its own, and refuses what is not', async () => {
    const valid = new Ajv2020({ strict: false, validateFormats: false }).compile(gardenExportJsonSchema());
    const store = value(await openStore(':memory:'));
    const newId = makeIds(45);
    const at = '2026-03-01T09:30:00Z';
    const entries = value(entriesFromDocument(demo('rooftop-containers'), { by: 'anna', at, newId }));
    const garden = entries[0]?.garden ?? '';
    const { hash } = value(await store.putPhoto('image/png', png(1)));
    const seen = { id: newId(), garden, by: 'anna', at, action: 'add', kind: 'observation' };
    value(await store.append([...entries, { ...seen, content: { date: '2026-03-01', photos: [hash] } }]));
    const text = value(await store.exportGarden(garden));
    await store.close();
    const file = JSON.parse(text);
    expect(valid(file), JSON.stringify(valid.errors)).toBe(true);
    for (const wrong of [
      { ...file, version: 2 },
      { ...file, more: true },
      { ...file, entries: [] },
      { ...file, entries: [{ ...file.entries[0], action: 'burn' }] },
      { ...file, entries: [{ ...file.entries[0], content: {} }] },
      { ...file, photos: [{ ...file.photos[0], hash: 'x' }] },
    ])
      expect(valid(wrong)).toBe(false);
  });
});
