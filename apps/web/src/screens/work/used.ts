import type { Problem } from '@sorrel/engine/derivation';
import { readGarden } from '@sorrel/engine/document';
import { fromSi, type UnitSystem, unitOf } from '@sorrel/engine/units';
import type { GardenRecord } from '../../data/garden-store.ts';
import { label, type WebCode } from '../../words/label.ts';

export interface Used {
  readonly date: string;
  readonly material: string;
  readonly amount: string;
}

export const massUnits: Readonly<Record<UnitSystem, readonly string[]>> = {
  metric: ['kg', 'g', 'lb', 'oz'],
  us: ['lb', 'oz', 'kg', 'g'],
};

/** A planned weight as a number and a unit to begin with, never more than planned. */
export function firstAmount(mass: number, units: UnitSystem): { value: string; unit: string } {
  const unit = units === 'us' ? (mass < 0.45 ? 'oz' : 'lb') : mass < 1 ? 'g' : 'kg';
  const step = unit === 'g' || unit === 'oz' ? 1 : 100;
  return { value: String(Math.floor(fromSi(mass, unitOf(unit)) * step + 1e-9) / step), unit };
}

const labels: Readonly<Record<string, WebCode>> = {
  date: 'web.work-day',
  material: 'web.work-material',
  amount: 'web.work-used',
};

/** What is wrong with an amount that was really used, by field, checked as the engine will read it. */
export function checkUsed(record: GardenRecord, used: Used, today: string): ReadonlyMap<string, string> {
  const { materials } = record.document;
  const place = { name: 'x', applications: [used] };
  const { problems } = readGarden(
    { garden: 'x', places: [place], ...(materials === undefined ? {} : { materials }) },
    { today },
  );
  return new Map(problems.flatMap((problem) => faultOf(problem)));
}

function faultOf({ field, message, fix }: Problem): [string, string][] {
  const key = /applications\[0\]\.(\w+)/.exec(field)?.[1];
  const code = key === undefined ? undefined : labels[key];
  if (key === undefined || code === undefined) return [];
  return [[key, `${message} ${fix}`.replaceAll(field, label(code))]];
}
