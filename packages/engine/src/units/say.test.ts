import { en, type MessageCode } from '@sorrel/almanac/words';
import { describe, expect, it } from 'vitest';
import type { Message } from '../derivation/message.ts';
import { slots } from './fill.ts';
import { printPh, printShare, say } from './say.ts';

const codes = Object.keys(en) as MessageCode[];

describe('every template of the catalogue', () => {
  it.each(codes)('%s', (code) => {
    const template: string = en[code];
    const names = slots(template);
    const parameters = Object.fromEntries(names.map((name) => [name, 'word']));
    const said = say({ code, parameters }, 'metric');
    expect(said).not.toMatch(/[{}]/);
    for (const name of names) {
      const { [name]: _, ...rest } = parameters;
      expect(() => say({ code, parameters: rest }, 'metric')).toThrow(RangeError);
    }
  });
});

describe('saying', () => {
  const message: Message = {
    code: 'units.wrong-kind',
    parameters: {
      text: { value: 0.2441, dimension: 'massPerArea' },
      found: { value: 6.4549, dimension: 'ph' },
      field: { value: 0.05, dimension: 'share' },
      wanted: 12,
      example: 1.23456,
    },
  };

  it('puts measured values in the reader’s own units', () => {
    expect(say(message, 'metric')).toBe('244 g/m² is 6.5; 5% needs 12, for example 1.23.');
    expect(say(message, 'us')).toBe('5 lb/100 sq ft is 6.5; 5% needs 12, for example 1.23.');
  });

  it('takes its words from the catalogue it is given', () => {
    const other = { ...en, 'units.wrong-kind': '{found}!' } as unknown as typeof en;
    expect(say(message, 'us', other)).toBe('6.5!');
  });

  it('throws on a code nobody wrote and on a value that is no number', () => {
    expect(() => say({ code: 'units.nothing' as MessageCode }, 'us')).toThrow(RangeError);
    const broken = { ...message.parameters, text: { value: Number.NaN, dimension: 'mass' as const } };
    expect(() => say({ code: 'units.wrong-kind', parameters: broken }, 'us')).toThrow(RangeError);
  });

  it('never calls a small chance none or a large one certain', () => {
    expect([0, 0.001, 0.007, 0.05, 0.5, 0.992, 0.999, 1].map(printShare)).toEqual([
      '0%',
      'less than 1%',
      '1%',
      '5%',
      '50%',
      '99%',
      'more than 99%',
      '100%',
    ]);
    expect([6.449, 0.04, 0, -0.3].map(printPh)).toEqual(['6.4', '0.04', '0.0', '-0.3']);
  });
});
