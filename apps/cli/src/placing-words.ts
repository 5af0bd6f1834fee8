/** What `sorrel arrange` says of its own. */
export const placingWords = {
  title: 'What to grow where',
  noWishes: 'say what is to grow, in a file named with --wishes.',
  nothingWished: 'There is no wish in that file that could be used.',
  seasons: (seasons: readonly number[]) =>
    seasons.length === 1 ? `Season ${seasons[0]}` : `Seasons ${seasons.join(', ')}`,
  growing: (plant: string, area: string, mark: string) => `${plant}, ${area}${mark}`,
  stays: ' (stays)',
  fixed: ' (fixed by you)',
  nothing: 'nothing',
  wrote: (file: string) => `The handout is in ${file}.`,
  asks: 'What it asks',
  columns: ['', 'Soil moved', 'Material', 'Money', 'Months', 'Places', 'Left out'] as const,
  this: 'This way',
  next: 'Next best',
  greedy: 'Plant by plant',
  inTurn: '"Plant by plant" gives each plant in turn the place that costs least at that moment.',
  moved:
    'Soil moved is counted as pure calcium carbonate, to the nearest end of each range. sorrel plan says what to weigh out.',
  unknownMoney: '?',
  unmet: 'Wishes without a place',
  clash: 'Does not fit where it must stay',
  apart: 'Keep apart',
  inSeasons: (plant: string, seasons: readonly number[], area: string) =>
    `${plant}, ${area}, season ${seasons.join(', ')}`,
} as const;

export const placingHelp: Readonly<Record<'arrange', string>> = {
  arrange: `sorrel arrange GARDEN --wishes FILE [options]

Which plants in which places, for one to three seasons, so that as little soil as
possible has to be moved, with the next best way. FILE (YAML or JSON) says what is
to grow and what is settled; docs/placing.md tells how to write it.

  --wishes FILE       what is to grow
  --seasons N         seasons to place, 1 to 3, instead of those in the file
  --seconds N         give up the search after so long (default 120)
  --pdf HANDOUT       write a handout of it too, a PDF of a page or two
  --units metric|us   show metric or US units
  --json              for machines, in SI units
  --ascii             plain letters only
  --why[=FIGURE]      show how the soil to be moved came about
  --as-of DAY         as if today were DAY
  --store STORE       take the garden from a record, and --garden NAME which one
`,
};
