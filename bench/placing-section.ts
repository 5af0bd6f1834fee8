// The section on placing; run alone it prints just that: `node scripts/run.mjs bench/placing-section.ts [--quick]`.
import { fileURLToPath } from 'node:url';
import { bundled } from './bundled.ts';
import type * as Placing from './placing.ts';

const fixed = (value: number, digits = 1) => value.toFixed(digits);

/** Measures the placing of plants and says it as a section of the bench. */
export async function placingSection(say: (line?: string) => void, quick: boolean): Promise<void> {
  const { placingBench } = await bundled<typeof Placing>('placing.ts');
  const size = quick ? ([20, 12, 2] as const) : ([60, 40, 3] as const);
  const { gardens, ratio } = await placingBench(size[0], size[1], size[2], quick ? [1, 2] : [1, 2, 3, 4, 5]);
  say('## Placing plants');
  say();
  say(
    `${size[0]} places, ${size[1]} plants, ${size[2]} seasons, in made-up gardens of beds, plots and pots with light, perennials, rotation,`,
  );
  say('fixed and untested places. The whole call (laying the garden out, building the programmes, reading the answer');
  say(
    'back, reasons), asked without the runner-up, against the solver’s own time inside that call. Bound: 3 times, and',
  );
  say('the optimum proven.');
  say('*Plant by plant* gives each plant in turn the place that costs least at that moment.');
  say();
  say('| garden | | whole call, s | solver, s | ratio | soil moved, kg CaCO3 | plant by plant, kg CaCO3 | more |');
  say('|---:|---|---:|---:|---:|---:|---:|---:|');
  for (const { seed, proven, whole, solver, ratio: each, moved, greedy, greedyUnmet } of gardens)
    say(
      `| ${seed} | ${proven ? 'proven' : '**not proven**'} | ${fixed(whole)} | ${fixed(solver)} | ${fixed(each, 2)} | ${fixed(moved, 2)} | ${fixed(greedy, 2)}${greedyUnmet > 0.01 ? ` and ${fixed(greedyUnmet)} m² left out` : ''} | ${moved > 0 ? `${fixed(100 * (greedy / moved - 1), 0)}%` : '–'} |`,
    );
  say();
  say(`Median ratio **${fixed(ratio, 2)}** (${ratio <= 3 ? 'within' : '**outside the bound**'}).`);
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  await placingSection((line = '') => console.log(line), process.argv.includes('--quick'));
