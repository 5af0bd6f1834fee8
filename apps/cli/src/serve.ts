import { type ReadGarden, writePlanReport } from '@sorrel/engine/document';
import { type Garden, type GardenPlan, planGarden } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import { exit } from './exit.ts';
import { canUnicode } from './layout.ts';
import { planText } from './plan-text.ts';
import { choicesText, problemsText } from './problems-text.ts';
import { progress } from './progress.ts';
import { speakerFor, toAscii } from './speak.ts';
import { words } from './words.ts';

export interface ServeOptions {
  readonly units?: UnitSystem | undefined;
  readonly json?: boolean | undefined;
  readonly ascii?: boolean | undefined;
  readonly why?: boolean | undefined;
  readonly figure?: string | undefined;
  /** Hold first dressings to the forecast. */
  readonly forecast?: boolean | undefined;
}

/** Plans what was read and shows it; problems go to standard error, so that the plan can be piped on. */
export async function serve(read: ReadGarden, options: ServeOptions): Promise<number> {
  const { garden, problems, skipped } = read;
  const speaker = speakerFor(options.units ?? read.units ?? 'metric', canUnicode(options.ascii));
  const nothing = garden.places.length === 0;
  const code = nothing ? exit.nothing : problems.length > 0 ? exit.partly : exit.fine;
  if (options.json) {
    const plan = planned(garden, options.why === true, options);
    process.stdout.write(`${JSON.stringify(writePlanReport(read, plan, speaker.system), null, 2)}\n`);
    return code;
  }
  if (problems.length > 0) process.stderr.write(`${problemsText(problems, skipped)}\n`);
  if (nothing) {
    process.stderr.write(`${words.nothingUsable}\n`);
    return code;
  }
  // The working is kept even when it is not shown: it says which figures rest on memory.
  const plan = planned(garden, true, options);
  const sources = options.why
    ? (await import('./sources-text.ts')).sourcesText(
        plan.recommendations.flatMap(({ derivation }) => derivation ?? []),
      )
    : undefined;
  const text = planText(garden, plan, speaker, { why: options.why === true, figure: options.figure, sources });
  const choices = choicesText(read.choices, speaker);
  const page = choices === '' ? text : `${text}\n${choices}`;
  process.stdout.write(speaker.unicode ? page : toAscii(page));
  return code;
}

/** The plan, with word of how far it has come when it takes long. */
function planned(garden: Garden, explain: boolean, options: ServeOptions): GardenPlan {
  const forecast = options.forecast === true;
  const explainForecast = forecast && options.why === true;
  const watch = progress(garden.places.length);
  const plan = planGarden(garden, { explain, forecast, explainForecast, onPlace: watch.at });
  watch.end();
  return plan;
}
