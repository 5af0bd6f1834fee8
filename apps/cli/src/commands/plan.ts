import { gardenFor, gardenOptions } from '../garden-input.ts';
import { read, splitWhy } from '../options.ts';
import { serve } from '../serve.ts';

const options = { ...gardenOptions, 'no-forecast': { type: 'boolean' } } as const;

/** `sorrel plan GARDEN`: the whole main job, from a document to a plan. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), options, 'plan');
  const asked = await gardenFor(values, positionals, 'plan');
  return serve(asked.read, { ...values, units: asked.speaker.system, forecast: values['no-forecast'] !== true });
}
