import type { MessageCode } from '@sorrel/almanac/words';
import type { Message } from '../derivation/message.ts';
import type { Recommendation } from '../plan/recommendation.ts';

/** What a person should hear by telephone rather than read on a page. */
const UNSAFE: ReadonlySet<MessageCode> = new Set<MessageCode>([
  'plan.caution-lead-talk',
  'plan.caution-lead-refer',
  'plan.caution-refer-extreme',
]);
/** What looks as if a reading or a form were wrong. */
const ODD: ReadonlySet<MessageCode> = new Set<MessageCode>([
  'plan.readings-disagree',
  'evidence.tests-differ',
  'evidence.home-differs',
]);

/**
 * Why the person who brought a sample should be called: something is unsafe, or something looks wrong.
 *
 * @returns messages of the plan itself, unsafe ones first; none when the page says it all
 */
export function callsFor({ plan }: { readonly plan: Recommendation }): readonly Message[] {
  const all = [...plan.cautions, ...plan.reasons, ...plan.notes];
  const first = all.filter(({ code }) => UNSAFE.has(code));
  return [...first, ...all.filter(({ code }) => ODD.has(code))];
}
