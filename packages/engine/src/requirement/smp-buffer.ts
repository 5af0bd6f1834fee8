import type { Ph } from '../units/si.ts';
import type { MethodInput, RequirementMethod } from './method.ts';

/**
 * The buffer pH that an SMP calibration may read: SMP itself, or Sikora, which was made to give the same
 * figures (r2 0.92, PaganiMallarino2012). Undefined for every other buffer.
 */
export function smpBufferPh(input: MethodInput): Ph | undefined {
  const { buffer } = input.test;
  return buffer !== undefined && (buffer.method === 'smp' || buffer.method === 'sikora') ? buffer.value : undefined;
}

/** A Sikora figure in an SMP calibration counts as foreign wherever the soil lies. */
export const smpSpread = (method: RequirementMethod, input: MethodInput): number | undefined =>
  input.test.buffer?.method === 'sikora' ? method.sdLog.foreign : undefined;
