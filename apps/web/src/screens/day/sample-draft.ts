import { gardenDocument } from '@sorrel/engine/document';
import type { Content } from '../../data/write.ts';

export type SampleContent = Content<'place'>;
export type SampleKind = 'bed' | 'lawn' | 'pots';

/** What stands in the check-in form, as typed. */
export interface SampleDraft {
  readonly code: string;
  readonly person: string;
  readonly neighbourhood: string;
  readonly kind: SampleKind;
  readonly plants: NonNullable<SampleContent['plants']>;
  readonly size: string;
  readonly count: string;
  readonly volume: string;
  readonly depth: string;
}

export const freshSample = (code: string): SampleDraft => ({
  code,
  person: '',
  neighbourhood: '',
  kind: 'bed',
  plants: [],
  size: '',
  count: '',
  volume: '',
  depth: '',
});

const code = gardenDocument.shape.places.element.shape.sample.unwrap().shape.code;
/** Whether a code can stand on a bag. */
export const isCode = (text: string): boolean => code.safeParse(text).success;

/** Two lengths say a size, one figure an area. */
const isSize = (text: string): boolean => /\d\s*[^\d]*\s*[x×*]\s*\d/i.test(text);

/**
 * The sample a form says. What the form does not ask for stays as it was.
 *
 * @param before its content when it is changed
 */
export function contentOf(draft: SampleDraft, before: Partial<SampleContent> = {}): SampleContent {
  const text = (value: string) => (value.trim() === '' ? undefined : value.trim());
  const pots = draft.kind === 'pots';
  const size = pots ? undefined : text(draft.size);
  const volume = text(draft.volume);
  const given = {
    ...before,
    name: draft.code.trim(),
    sample: present({
      code: draft.code.trim(),
      person: text(draft.person),
      neighbourhood: text(draft.neighbourhood),
    }),
    kind: pots ? 'container' : draft.kind === 'lawn' ? 'plot' : 'bed',
    situation: draft.kind === 'lawn' ? 'lawn' : before.situation === 'around plants' ? before.situation : undefined,
    size: size !== undefined && isSize(size) ? size : undefined,
    area: size !== undefined && !isSize(size) ? size : undefined,
    pots: pots && volume !== undefined ? { count: Number(text(draft.count) ?? '1'), volume } : undefined,
    plants: draft.plants.length === 0 ? undefined : draft.plants,
    depth: text(draft.depth),
  };
  return present(given) as SampleContent;
}

/** The form of a sample that is there already. */
export function draftOf(content: SampleContent): SampleDraft {
  const { sample, pots } = content;
  return {
    code: sample?.code ?? content.name,
    person: sample?.person ?? '',
    neighbourhood: sample?.neighbourhood ?? '',
    kind: content.kind === 'container' || pots !== undefined ? 'pots' : content.situation === 'lawn' ? 'lawn' : 'bed',
    plants: content.plants ?? [],
    size: content.size ?? content.area ?? '',
    count: pots === undefined ? '' : String(pots.count),
    volume: pots?.volume ?? '',
    depth: content.depth ?? '',
  };
}

const present = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined)) as T;
