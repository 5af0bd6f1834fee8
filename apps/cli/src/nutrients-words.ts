/** What the commands about nutrients, leaves and weeds say of their own. */
export const nutrientWords = {
  usableTitle: 'What the plants can use',
  columns: ['Nutrient', 'Today', 'Planned', 'Why'] as const,
  today: (ph: string, planned: string | undefined) =>
    planned === undefined ? `pH today ${ph}.` : `pH today ${ph}, planned ${planned}.`,
  noPh: 'There is no pH of this place yet, so nothing can be said.',
  change: 'What moving the pH would do',
  test: 'What the soil test says',
  verdicts: {
    'enough and usable': 'ENOUGH AND USABLE',
    'enough but locked': 'ENOUGH BUT LOCKED',
    'truly short': 'TRULY SHORT',
    'too much': 'TOO MUCH',
    'cannot tell': 'CANNOT TELL',
  },
  heed: 'Heed',
  judged: '* rests on memory or on our own judgement of the size; good, fair and poor are rough on purpose.',
  drawn: (file: string) => `Drawn in ${file}.`,
  needsOnePlace: (names: readonly string[]) =>
    `a picture shows one place; name it with --place. There are: ${names.join(', ')}.`,
  candidates: 'What it may be',
  next: 'Next',
  notAnswer: (question: string, answer: string, known: string) => `--${question} is ${known}, not "${answer}".`,
  notNumber: (text: string) => `--ph wants a pH from 0 to 14, not "${text}".`,
  option: (question: string, answers: readonly string[]) => `--${question} ${answers.join(' | ')}`,
  noWeeds: 'name at least one weed, such as "sheep sorrel".',
  leanTitle: 'What they say of the pH',
} as const;

/** What `--help` prints for these commands. */
export const nutrientHelp: Readonly<Record<'usable' | 'leaves' | 'weeds', string>> = {
  usable: `sorrel usable GARDEN [options]

How well plants can use each nutrient at the pH of today and at the planned one,
why, and whether what the soil test lists is enough, locked, short or too much.

  --place NAME        only this place
  --svg FILE          draw it as a picture, for one place
  --pdf FILE          print it, a page or more for each place
  --as-of DAY         as if today were DAY
  --store STORE       take the garden from a record, and --garden NAME which one
  --units metric|us   show metric or US units
  --json              for machines, in SI units
  --ascii             plain letters only
`,
  leaves: `sorrel leaves [options]

What may lie behind what you see on a plant, with rough chances, and what to
look at next. Say what you know; begin with nothing and follow the questions.

  --leaves WORD       older, middle, young, tip, all, none
  --pattern WORD      even, between-veins, edges, spots, purple, twisted,
                      dieback, wilt-only
  --spots WORD        none, tan, dark
  --growth WORD       usual, slow, small-leaves, brittle, wilts
  --roots WORD        fine, brown, short, galls
  --fruit WORD        fine, end-rot, corky, poor
  --recent WORD       nothing, cold-wet, waterlogged, dry, fed, spray
  --crop NAME         which plant
  --ph PH             of the soil, or of the mix with --pot
  --pot               it grows in a potting mix
  --pdf FILE          print what you saw, what it may be and what to look at
  --json              for machines
  --ascii             plain letters only
`,
  weeds: `sorrel weeds NAME ... [options]

What weeds say of the pH: mostly nothing. Put names of several words in quotes.

  --json              for machines
  --ascii             plain letters only
`,
};
