import type { Problem } from '../derivation/problem.ts';
import type { ForecastInput } from './types.ts';

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** What is wrong with the input of a forecast, each with field, value and what to enter instead; empty when all is well. */
export function checkForecast(input: ForecastInput): Problem[] {
  const found: Problem[] = [];
  const say = (code: string, field: string, value: unknown, message: string, fix: string) =>
    found.push({ code: `forecast.${code}`, field, value, message, fix });
  const between = (field: string, value: number | undefined, low: number, high: number, what: string) => {
    if (value !== undefined && !(value >= low && value <= high))
      say(
        'range',
        field,
        value,
        `${what} must lie between ${low} and ${high}.`,
        `Enter ${what} from ${low} to ${high}.`,
      );
  };
  const date = (field: string, value: string) => {
    if (!DATE.test(value) || Number.isNaN(Date.parse(`${value}T00:00:00Z`)))
      say('date', field, value, 'This is not a date.', 'Write the date as year-month-day, like 2026-03-15.');
  };
  date('start', input.start);
  between('years', input.years, 0.1, 5, 'the years to look ahead');
  between('present.mean', input.present.mean, 2, 11, 'the present pH');
  between('present.sd', input.present.sd, 0, 3, 'the error of the present pH');
  between('layer.mass', input.layer.mass, 1, 2000, 'the soil mass in kg per square metre');
  between('layer.depth', input.layer.depth, 0.01, 1.5, 'the depth in metres');
  between('curve.beta0', input.curve.beta0, 1e-5, 0.1, 'the buffer capacity in kg CaCO3 per kg and pH');
  between('curve.carbonate', input.curve.carbonate, 0, 1, 'the carbonate share');
  between('members', input.members, 1, 100_000, 'the number of members');
  between('testSd', input.testSd, 0, 3, 'the error of the retest');
  for (const name of ['range', 'safe'] as const) {
    const range = input[name];
    if (range !== undefined && !(range.low < range.high))
      say('ends', name, range, 'The low end is not below the high end.', 'Enter the lower pH first.');
  }
  for (const name of ['air', 'soil', 'rain'] as const) {
    const list = input.weather?.[name];
    if (list !== undefined && (list.length !== 12 || list.some((value) => !Number.isFinite(value))))
      say(
        'months',
        `weather.${name}`,
        list,
        'Twelve monthly figures are needed.',
        'Enter one figure a month, January first.',
      );
  }
  for (const [i, application] of input.applications.entries()) {
    date(`applications[${i}].date`, application.date);
    between(`applications[${i}].currency`, application.currency, -50, 50, 'the amount in kg CaCO3 per square metre');
    between(`applications[${i}].incorporation`, application.incorporation, 0, 1.5, 'the mixing depth in metres');
    const { reaction } = application;
    if (reaction.law !== 'fast' && application.currency < 0 !== (reaction.law === 'oxidising'))
      say(
        'sign',
        `applications[${i}].currency`,
        application.currency,
        'Lime sweetens and sulfur sours.',
        'Give lime a positive amount and sulfur a negative one.',
      );
    if (reaction.law === 'fast')
      between(`applications[${i}].reaction.days`, reaction.days, 0.1, 3650, 'the reaction time in days');
  }
  return found;
}
