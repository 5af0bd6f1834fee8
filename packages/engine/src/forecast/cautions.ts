import type { Message } from '../derivation/message.ts';
import type { ForecastInput } from './types.ts';

/** Al release is steep below pH 5 (KAR17); pH below 4 is dangerous to all but bog plants (judgement). */
const ALUMINIUM = 5;
const DANGER = 4;

/** What a reader must hear beside the picture. */
export function cautions(
  input: ForecastInput,
  result: { readonly bands: readonly { readonly share: number; readonly low: readonly number[] }[] },
): readonly Message[] {
  const found: Message[] = [];
  const souring = input.applications.some((application) => application.currency < 0);
  // Lower end of the 80 % band: one garden in ten goes lower.
  const lowest = Math.min(...(result.bands.find((band) => band.share === 0.8)?.low ?? [7]));
  const start = input.present.mean;
  if (souring && lowest < DANGER) found.push({ code: 'forecast.danger-sour' });
  else if (souring && lowest < ALUMINIUM && start >= ALUMINIUM) found.push({ code: 'forecast.aluminium' });
  if (input.curve.carbonate > 0 && souring) found.push({ code: 'forecast.carbonate' });
  if (input.applications.some((application) => application.reaction.law === 'oxidising'))
    found.push({ code: 'forecast.sulfur-slow' });
  if (input.present.sd > 0.4) found.push({ code: 'forecast.wide-start' });
  const weather = input.weather;
  if (weather?.air === undefined && weather?.soil === undefined && weather?.steady === undefined)
    found.push({ code: 'forecast.typical-weather' });
  return found;
}
