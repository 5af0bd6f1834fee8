import { carbonicWaterPh } from '@sorrel/engine/forecast';
import type { Adapter } from '../adapter.ts';

/** Water that holds nothing but the carbon dioxide of the air. */
export const rain: readonly Adapter[] = [
  {
    name: 'clean rain',
    accepts: ({ inputs, expected }) =>
      'ph' in expected && ['pco2_atm', 'log_KH', 'pKa1'].every((key) => typeof inputs[key] === 'number'),
    compute: ({ inputs }) => ({
      ph: carbonicWaterPh(Number(inputs.pco2_atm), Number(inputs.log_KH), -Number(inputs.pKa1)),
    }),
  },
];
