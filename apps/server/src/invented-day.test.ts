import { doubtfulReadings, meterHistory } from '@sorrel/engine/day';
import { readGarden } from '@sorrel/engine/document';
import { checkEntry } from '@sorrel/store/entry';
import { assembleRecord, emptyRecord, thingsOfKind, withEntries } from '@sorrel/store/record';
import { describe, expect, it } from 'vitest';
import { inventedDay } from './invented-day.ts';

const made = () => {
  let count = 0;
  const id = () => `00000000-0000-7000-8000-${String(++count).padStart(12, '0')}`;
  return inventedDay('Sorrel', '2026-11-25T00:00:00Z', id);
};

describe('the invented soil day', () => {
  const entries = made();
  const record = withEntries(
    emptyRecord(entries[0]?.garden ?? ''),
    entries.map((entry, index) => ({ number: index + 1, entry })),
  );
  const things = record.standing();

  it('is the same every time, and holds by the rules of the record', () => {
    expect(made()).toEqual(entries);
    expect(entries.flatMap((entry) => (checkEntry(entry).ok ? [] : [entry]))).toEqual([]);
  });

  it('has 300 samples with a pH, none with a name, all of which can be read', () => {
    const document = assembleRecord(record)?.document;
    expect(document?.places).toHaveLength(300);
    expect(document?.places.every(({ sample, tests }) => sample?.person === undefined && tests?.length === 1)).toBe(
      true,
    );
    const read = readGarden(document, { today: '2026-11-25' });
    expect(read.problems).toEqual([]);
  });

  it('has one meter that stays sound and one that drifts, with readings left to repeat', () => {
    const checks = thingsOfKind(things, 'quality');
    const verdicts = ['Blue', 'Green'].map((meter) =>
      meterHistory(
        checks
          .filter(({ content }) => content.meter === meter)
          .map(({ id, number, content }) => ({ id, order: number, ...content })),
      ).filter(({ check }) => check !== 'duplicate'),
    );
    expect(verdicts[0]?.every(({ sound }) => sound)).toBe(true);
    expect(verdicts[1]?.filter(({ sound }) => !sound)).toHaveLength(1);
    const readings = thingsOfKind(things, 'reading').map(({ id, number, place, content }) => ({
      id,
      order: number,
      sample: place ?? '',
      meter: content.meter ?? '',
    }));
    const doubtful = doubtfulReadings(verdicts[1]?.map((verdict) => ({ ...verdict, meter: 'Green' })) ?? [], readings);
    expect(doubtful).toHaveLength(10);
  });
});
