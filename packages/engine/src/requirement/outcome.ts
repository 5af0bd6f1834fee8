import type { MessageCode } from '@sorrel/almanac/words';
import type { MethodOutcome } from './method.ts';

type Outside = Extract<MethodOutcome, { state: 'outside' }>;

export const NOT_GIVEN: MethodOutcome = { state: 'not given' };

const outside = (code: MessageCode): Outside => ({ state: 'outside', reason: { code } });

/** The rate is printed as zero. */
export const PRINTED_ZERO = outside('requirement.outside-zero');
/** No published target lies far enough above the present pH for the rate to say anything of the soil. */
export const TOO_CLOSE = outside('requirement.outside-close');
export const NOT_MINERAL = outside('requirement.outside-medium');
export const TARGET_TOO_HIGH = outside('requirement.outside-target');
export const LIMY = outside('requirement.outside-limy');
export const CEC_UNCLEAR = outside('requirement.outside-cec');
/** The figure lies beyond what the publication covers, which the message repeats. */
export const beyond = (domain: string): Outside => ({
  state: 'outside',
  reason: { code: 'requirement.outside-range', parameters: { domain } },
});
