import type { Message } from '../derivation/message.ts';
import type { PlantRange } from '../plan/place.ts';
import { limitsOf } from '../plan/plant-range.ts';
import type { Ph } from '../units/si.ts';
import { type DiseaseRow, findDisease, isHost } from './diseases.ts';

/** A limit a disease that is present sets, and what it is worth. */
export interface DiseaseLimit {
  readonly disease: string;
  readonly side: 'above' | 'below';
  readonly ph: Ph;
  /** Plants of the place that catch it. */
  readonly hosts: readonly string[];
  /** A plant of the place does not stand the limit, so it is said and not used. */
  readonly refusedBy?: string;
  readonly sources: readonly string[];
}

export interface DiseaseTarget {
  /** pH the limits leave: above `low`, below `high`; undefined ends are open. */
  readonly low?: Ph;
  readonly high?: Ph;
  readonly limits: readonly DiseaseLimit[];
  /** Limits that cannot hold together: one bed cannot serve both. */
  readonly conflicts: readonly { readonly a: string; readonly b: string }[];
  readonly messages: readonly Message[];
}

type Plant = Pick<PlantRange, 'name' | 'low' | 'high' | 'toleratesLow' | 'toleratesHigh'> & { readonly key?: string };

/**
 * What diseases present in a place do to its target. A limit counts only when a plant of the place catches the disease
 * and no plant of the place would have to stand a pH beyond what it tolerates. Limits that pull apart are conflicts and
 * set nothing: such plants need two places.
 *
 * @param plants plants of the place
 * @param present diseases seen there, by key or name; unknown ones are said
 * @source diseases of the almanac; rule SORREL
 */
export function diseaseTarget(plants: readonly Plant[], present: readonly string[]): DiseaseTarget {
  const messages: Message[] = [];
  const limits: DiseaseLimit[] = [];
  for (const text of present) {
    const disease = findDisease(text);
    if (disease === undefined) {
      messages.push({ code: 'nutrients.disease-unknown', parameters: { disease: text } });
      continue;
    }
    const hosts = plants.filter((plant) => isHost(disease, plant.key ?? plant.name));
    if (hosts.length === 0) {
      messages.push({ code: 'nutrients.disease-no-host', parameters: { disease: disease.name } });
      continue;
    }
    const limit = limitOf(disease, hosts, plants);
    if (limit !== undefined) limits.push(limit);
    messages.push(...said(disease, limit));
  }
  const used = limits.filter((limit) => limit.refusedBy === undefined);
  const conflicts = clashes(limits);
  for (const { a, b } of conflicts) messages.push({ code: 'nutrients.disease-conflict', parameters: { a, b } });
  const free = conflicts.length === 0;
  const lows = used.filter(({ side }) => side === 'above').map(({ ph }) => ph);
  const highs = used.filter(({ side }) => side === 'below').map(({ ph }) => ph);
  return {
    ...(free && lows.length > 0 ? { low: Math.max(...lows) } : {}),
    ...(free && highs.length > 0 ? { high: Math.min(...highs) } : {}),
    limits,
    conflicts,
    messages,
  };
}

function limitOf(disease: DiseaseRow, hosts: readonly Plant[], plants: readonly Plant[]): DiseaseLimit | undefined {
  if (!disease.setsTarget) return undefined;
  const above = disease.keepAbove !== undefined;
  const ph = disease.keepAbove ?? disease.keepBelow;
  if (ph === undefined) return undefined;
  // A host whose own range lies wholly on the other side is the reason to look elsewhere, not to harm it.
  const refused = plants.find((plant) => (above ? ph > limitsOf(plant).high : ph < limitsOf(plant).low));
  return {
    disease: disease.name,
    side: above ? 'above' : 'below',
    ph,
    hosts: hosts.map((plant) => plant.name),
    ...(refused === undefined ? {} : { refusedBy: refused.name }),
    sources: disease.sources,
  };
}

function said(disease: DiseaseRow, limit: DiseaseLimit | undefined): Message[] {
  const name = disease.name;
  if (limit === undefined) return [{ code: 'nutrients.disease-no-limit', parameters: { disease: name } }];
  const parameters = { disease: name, limit: { value: limit.ph, dimension: 'ph' } } as const;
  const messages: Message[] = [
    { code: limit.side === 'above' ? 'nutrients.disease-above' : 'nutrients.disease-below', parameters },
    { code: 'nutrients.disease-trust', parameters: { disease: name, reliability: disease.reliability } },
  ];
  if (limit.refusedBy !== undefined)
    messages.push({ code: 'nutrients.disease-refused', parameters: { ...parameters, plant: limit.refusedBy } });
  return messages;
}

function clashes(limits: readonly DiseaseLimit[]): { a: string; b: string }[] {
  return limits
    .filter(({ side }) => side === 'above')
    .flatMap((a) =>
      limits.filter(({ side, ph }) => side === 'below' && ph < a.ph).map((b) => ({ a: a.disease, b: b.disease })),
    );
}
