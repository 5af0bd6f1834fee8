import { readGarden } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { entriesFromDocument, type Store } from '../src/index.ts';
import { at, bedOf, demo, demos, makeIds, value } from './kit.ts';

export function assembleContract(open: () => Promise<Store>): void {
  describe('assemble', () => {
    it.each(demos)('gives the demo garden %s back as it was written', async (name) => {
      const store = await open();
      const document = demo(name);
      const entries = value(entriesFromDocument(document, { by: 'anna', at, newId: makeIds(30) }));
      value(await store.append(entries));
      const assembled = value(await store.assemble(entries[0]?.garden ?? ''));
      expect(assembled.document).toEqual(document);
      const today = '2026-11-25';
      expect(readGarden(assembled.document, { today })).toEqual(readGarden(document, { today }));
      expect(readGarden(assembled.document, { today }).problems).toEqual([]);
    });

    it('counts readings as tests, ticked-off work as applications, plantings as plants, the newest water as water', async () => {
      const store = await open();
      const { garden, add, bed } = await bedOf(store, 31);
      const meterCheck = [{ buffer: 7, shown: 7.1 }];
      const reading = add(
        'reading',
        { date: '2026-02-03', by: 'slurry-meter', ph: { value: 5.6, in: 'water-1:1' }, meterCheck },
        bed,
      );
      const used = { material: 'calcitic lime', amount: '1.8 kg' };
      const task = add('task', { date: '2026-02-04', task: 'lime Bed 1', used }, bed);
      value(
        await store.append([
          reading,
          task,
          add('task', { date: '2026-02-05', task: 'retest' }, bed),
          add('planting', { date: '2026-02-05', plant: 'potato' }, bed),
          add('planting', { date: '2025-02-05', plant: 'tomato', lifted: '2025-10-01' }, bed),
          add('water', { date: '2026-01-01', alkalinity: '150 mg/L CaCO3' }),
          add('water', { date: '2026-02-01', alkalinity: '3 meq/L', perYear: '300 mm' }, bed),
          add('water', { date: '2025-02-01', alkalinity: '1 meq/L' }, bed),
          add('material', { material: 'wood ash', onHand: '4 kg' }),
          add('feed', { date: '2026-02-06', material: 'ammonium sulfate', amount: '100 g' }, bed),
          add('place', { name: 'Pot' }),
        ]),
      );
      const { document, from } = value(await store.assemble(garden));
      expect(document.places[0]).toEqual({
        name: 'Bed 1',
        area: '48 sq ft',
        plants: ['blueberry', 'potato'],
        water: { alkalinity: '3 meq/L', perYear: '300 mm' },
        tests: [{ date: '2026-02-03', by: 'slurry-meter', ph: { value: 5.6, in: 'water-1:1' } }],
        applications: [{ date: '2026-02-04', ...used }],
      });
      expect(document.places[1]?.water).toEqual({ alkalinity: '150 mg/L CaCO3' });
      expect(document.materials).toEqual([{ material: 'wood ash', onHand: '4 kg' }]);
      expect(from.places[0]).toEqual({ id: bed, tests: [reading.id], applications: [task.id] });
    });

    it('says the faults of a document with the name of the place, and stores nothing of it', async () => {
      const typed = { garden: 'G', places: [{ name: 'Bed 1', tests: [{ date: 'May', by: 'laboratory' }] }, 'Bed 2'] };
      const result = entriesFromDocument(typed, { by: 'anna', at, newId: makeIds(32) });
      expect(result.ok).toBe(false);
      if (result.ok) return;
      expect(result.problems).toMatchObject([
        { code: 'document.not-a-date', place: 'Bed 1', field: 'content.date', value: 'May' },
        { code: 'document.no-group', field: 'content', value: 'Bed 2' },
      ]);
    });
  });
}
