import { dayHelp } from './day-words.ts';
import { intakeHelp } from './intake-words.ts';
import { nutrientHelp } from './nutrients-words.ts';
import { placingHelp } from './placing-words.ts';

/** Everything the command line says of its own; sentences about soil come from the almanac's catalogue. */
const helpHint = (command: string): string => `See: sorrel ${command} --help`;

export const words = {
  // faults
  usage: (command: string, reason: string) => `sorrel ${command}: ${reason}\n${helpHint(command)}`,
  noCommand: (name: string, known: readonly string[]) =>
    `sorrel: there is no command "${name}". There are: ${known.join(', ')}.\nSee: sorrel --help`,
  noFile: 'name the file to read, or - to read what is piped in.',
  oneFileOnly: (extra: string) => `one file at a time, please; "${extra}" is one too many.`,
  notUnits: (text: string) => `--units is metric or us, not "${text}".`,
  notDay: (text: string) => `--as-of wants a day such as 2026-10-03, not "${text}".`,
  notChoice: (option: string, text: string, known: string) => `--${option} is ${known}, not "${text}".`,
  strayWord: (text: string) => `"${text}" belongs to no option; words with spaces need quotes.`,
  noSchema: (name: string, known: readonly string[]) => `there is a schema of ${known.join(', ')}, not of "${name}".`,
  noKey: 'name at least one source, such as OSU-EM9585.',
  noPlace: (name: string, known: readonly string[]) =>
    `There is no place called "${name}" that could be used. There are: ${known.join(', ')}.`,
  oneBed: 'One bed',
  oneTable: 'Table',
  thisBed: 'This bed',
  nothingGiven: 'say at least the pH, for example --ph 5.4.',
  cannotRead: (file: string, reason: string) => `${file}: ${reason}`,
  cannotParse: (file: string, kind: string, reason: string) =>
    `${file} is not good ${kind}, so nothing in it could be read.\n${reason}`,
  cannotWrite: (file: string, reason: string) => `${file} could not be written: ${reason}`,
  pipedIn: 'What was piped in',
  noSuchFile: 'there is no such file.',
  isFolder: 'this is a folder, not a file.',
  notAllowed: 'this file may not be read.',
  emptyTable: 'The table is empty. The first line should name the columns; see docs/soil-test-table.md.',

  // the record
  noStore: 'say where the record is: --store FILE, or --store with a postgres: address.',
  fileOrStore: 'name a file, or a garden of the record, not both.',
  whichGarden: (wanted: string | undefined, found: number, known: readonly string[]) =>
    known.length === 0
      ? 'The record holds no garden yet. Put one in with: sorrel import'
      : `${
          wanted === undefined
            ? 'The record holds several gardens. Name one with --garden.'
            : found === 0
              ? `The record holds no garden called "${wanted}".`
              : `The record holds ${found} gardens called "${wanted}". Name one by its id.`
        }\nThere are: ${known.join(', ')}.`,
  noGardens: 'The record holds no garden yet.',
  gardenColumns: ['Garden', 'Places', 'Id'] as const,
  imported: (garden: string, entries: number) => `Put in as garden ${garden}: ${entries} entries.`,
  recordRead: (garden: string, added: number, known: number) =>
    `Read in garden ${garden}: ${added} entries were new, ${known} were there already.`,
  notImported: 'Nothing was put into the record. Mend the document first.',

  // problems
  problemsTitle: (count: number) =>
    count === 1 ? 'One entry could not be used' : `${count} entries could not be used`,
  value: 'You wrote',
  fix: 'Mend it',
  leftOut: 'What that means',
  allFine: (places: number) =>
    `Everything was understood: ${places === 1 ? '1 place' : `${places} places`}. Nothing was left out.`,
  nothingUsable: 'No place could be used, so there is no plan.',
  choicesTitle: 'Taken for granted, because nobody said',

  progress: (done: number, all: number) => `${done} of ${all} places`,

  // plan
  asOf: (day: string) => `Plan as of ${day}`,
  phAxis: 'pH',
  phKey: (g: { today: string; smear: string; within: string; arrow: string }) =>
    `${g.today} today   ${g.smear} how sure (19 in 20)   [${g.within}${g.within}] wanted   ${g.arrow} the plan`,
  phNow: 'pH now',
  giveOrTake: (mean: string, sd: string, day: string) => `${mean}, give or take ${sd} (${day})`,
  noReading: 'no reading',
  wanted: 'Wanted',
  wantedText: (low: string, high: string, aim: string, whom: string) => `${low} to ${high}, aim ${aim}${whom}`,
  forPlants: (plants: string) => ` for ${plants}`,
  ownFigures: ' (your own figures)',
  generalRange: ' (a general range: no plants were named)',
  need: 'Need',
  needText: (best: string, range: string) => `about ${best} of pure calcium carbonate (8 times in 10 it is ${range})`,
  needLowerText: (best: string, range: string) =>
    `acid worth about ${best} of calcium carbonate (8 times in 10 it is ${range})`,
  doThis: 'What to do',
  step: (number: number) => `Step ${number}: `,
  later: (number: number) => `Step ${number}, only if a retest still asks for it: `,
  scoops: (text: string) => ` (about ${text})`,
  of: (mass: string, product: string) => `${mass} of ${product}`,
  per: (rate: string) => `That is ${rate}.`,
  between: (from: string, to: string) => `Between ${from} and ${to}.`,
  overshoot: (chance: string) => `Chance that step 1 goes too far: ${chance}.`,
  retest: 'Test again',
  retestText: (from: string, to: string) => `${from} to ${to}.`,
  care: 'Take care',
  taught: 'What this place has taught',
  findOut: 'Find out next',
  instead: 'Would suit it as it is',
  readings: 'How we know',
  readingColumns: ['Reading', 'Resists (per pH)', 'Handbook says', ''] as const,
  ownAnswers: 'Retests of this place',
  speaks: 'counts',
  besideIt: 'beside',
  agree: 'The readings agree within their errors.',
  oneReading: 'Only one reading speaks, so nothing checks it.',
  disagree: 'The readings disagree by more than their errors explain.',
  outside: 'Not used',
  likeIt: (count: number) => `(${count} more like it.)`,
  ofMix: (volume: string) => `${volume} of mix`,
  deep: (area: string, depth: string) => `${area}, ${depth} deep`,
  memoryMark: '*',
  memoryNote: '* from memory: nobody could retrieve the publication to check the figure.',
  onePlant: (text: string) => `a page is of one plant; "${text}" is the name of none. Search without --pdf first.`,
  onlyPots: (range: string) => `pots ${range}`,
  onlyFound: (range: string) => `found ${range}`,
  upTo: (high: string) => `up to ${high}`,
  halfKnownNote:
    'pots: only a range for potting mixes is published.\nfound: only the ground where it grows is published, no best pH.\nNeither is a target for a bed; give your own pH range there.',
  memoryFigures: (titles: string) => `Rests in part on figures from memory, not retrieved: ${titles}.`,
  decisions: {
    'leave alone': 'LEAVE IT ALONE',
    raise: 'RAISE THE pH',
    lower: 'LOWER THE pH',
    'not practical': 'DO NOT TRY TO CHANGE IT',
    'grow something else': 'GROW SOMETHING ELSE HERE',
    'find out first': 'FIND OUT FIRST',
  },
  verdicts: {
    'leave alone': 'leave',
    raise: 'raise',
    lower: 'lower',
    'not practical': 'do not try',
    'grow something else': 'other plants',
    'find out first': 'find out',
  },

  // shopping
  shopping: 'To buy for the first steps',
  shoppingColumns: ['Material', 'Needed', 'At hand', 'Buy', 'Bags', 'Cost'] as const,
  nothingToBuy: 'Nothing needs to be bought now.',
  localRules: 'Local rules, the label on the bag and licensed advice come before anything printed here.',

  // why
  why: 'How the figures came about',
  whyNothing: (figure: string, known: string) => `No figure is called "${figure}" here. There are: ${known}.`,
  whyFormula: 'Formula',
  whyWith: 'With',
  whyGives: 'Gives',
  whySource: 'Source',
  whyMemory: '(from memory, not retrieved)',
  origins: { entered: 'you entered it', step: 'worked out above', table: 'from a table', choice: 'our choice' },
  fromStep: (number: number) => `from ${number}`,
  sourcesTitle: 'Sources',

  // lists
  plantColumns: ['Plant', 'pH', 'Key', 'Sources'] as const,
  materialColumns: ['Material', 'Use', 'Worth', 'Key'] as const,
  methodColumns: ['Method', 'From', 'Counts', 'Sources'] as const,
  none: (text: string) => `Nothing is called "${text}".`,
  didYouMean: (names: string) => `Did you mean ${names}?`,
  materialNote: 'Worth: what it neutralises, beside pure calcium carbonate; below zero it sours.',
  notAtHome: 'not at home',
  everywhere: 'everywhere',
  yes: 'yes',
  onlyCompared: 'compared',
  citeUnknown: (key: string, near: string | undefined) =>
    `There is no source called "${key}".${near === undefined ? '' : ` Did you mean ${near}?`}`,

  // table
  threads: (typed: string) => `--threads takes a whole number from 1 to 64, not "${typed}".`,
  tableDone: (rows: number, used: number, bad: number) =>
    `${rows} rows read, ${used} planned, ${bad} left out${bad === 0 ? '.' : ':'}`,
  tableRow: (line: number, place: string | undefined) =>
    place === undefined ? `line ${line}` : `line ${line}, ${place}`,
  tableMore: (count: number) => `... and ${count} more. Use --bad FILE to keep them all.`,
} as const;

const shared = `  --units metric|us   show metric or US units
  --json              for machines, in SI units
  --ascii             plain letters only
`;

const record = `  --store STORE       take the garden from a record, and --garden NAME which one
`;

/** What `--help` prints, by command. */
export const help: Readonly<Record<string, string>> = {
  ...nutrientHelp,
  ...placingHelp,
  ...intakeHelp,
  ...dayHelp,
  all: `Sorrel keeps every bed, plot and container in the pH range its plants need.

  sorrel plan GARDEN        plan a whole garden from its document (YAML or JSON)
  sorrel forecast GARDEN    what the pH of each place will do
  sorrel account GARDEN     what pushes the pH, year by year
  sorrel learned GARDEN     what tests after dressings have taught
  sorrel compare GARDEN     the ways open to a place, side by side
  sorrel bed --ph 5.4 ...   plan one bed from what you type
  sorrel table TESTS.csv    plan each row of a table of soil tests
  sorrel intake FILE        read a table as a laboratory sends it, and plan its rows
  sorrel day GARDEN         plan a soil day, a page for each person
  sorrel arrange GARDEN     what to grow where, so that the least soil is moved
  sorrel usable GARDEN      what its pH does to the nutrients, and what is locked
  sorrel leaves             what may lie behind what you see on a plant
  sorrel weeds NAME ...     what weeds say of the pH
  sorrel check GARDEN       read a garden document and report what is wrong
  sorrel plants [WORDS]     plants and the pH they want
  sorrel materials [WORDS]  limes, sulfurs and other materials
  sorrel methods            the published methods that read a soil test
  sorrel cite KEY ...       where a figure comes from
  sorrel schema             JSON Schema of the garden document

  sorrel gardens --store S  which gardens the record in S holds
  sorrel import GARDEN      put a garden document into the record
  sorrel export             take a garden out of it

sorrel COMMAND --help says more. A file called - is what is piped in.
Ends with 0 when all is well, 1 when some entries could not be used and the
rest was served, 2 when nothing could be done, 64 when the command was wrong.
`,
  plan: `sorrel plan GARDEN [options]
sorrel plan --store STORE --garden NAME [options]

Plans every place of a garden document, YAML or JSON, or of a garden in the
record: a file such as sorrel-data/sorrel.sqlite, or a postgres: address.

${shared}  --why[=FIGURE]      show how the figures came about, or one of them
  --as-of DAY         plan as if today were DAY, such as 2026-10-03
  --place NAME        only this place
  --no-forecast       do not hold the first step to the forecast: quicker
`,
  forecast: `sorrel forecast GARDEN [options]

Draws what the pH of each place will do, with the plan, and how sure that is.

  --without           with nothing put on
  --years N           years to look ahead, 1 to 5 (default 3)
  --svg FILE          draw it as a picture, for one place
  --place NAME        only this place
${shared}  --why[=FIGURE]      show how the figures came about, or one of them
  --as-of DAY         look ahead from DAY
${record}`,
  account: `sorrel account GARDEN [options]

Everything that pushes the pH of each place, year by year, in one currency,
and what a year of the same would do.

  --without           with nothing put on
  --years N           years to look ahead, 1 to 5 (default 3)
  --place NAME        only this place
${shared}  --why[=FIGURE]      show how the figures came about, or one of them
  --as-of DAY         look ahead from DAY
${record}`,
  learned: `sorrel learned GARDEN [options]

What tests after dressings have taught about each place, how sure that is, and
which tests do not fit the others.

  --place NAME        only this place
${shared}  --why[=FIGURE]      show how the figures came about, or one of them
  --as-of DAY         as if today were DAY
${record}`,
  compare: `sorrel compare GARDEN [options]

The ways open to a place side by side: what each costs, when the pH is in range,
the chance of going too far, and how often one has to go out.

  --place NAME        only this place
${shared}  --as-of DAY         as if today were DAY
${record}`,
  bed: `sorrel bed --ph PH [options]

Plans one bed from what you type.

  --ph PH             the pH, and --ph-in how it was read, such as water-1:1
  --buffer PH         the buffer pH, and --buffer-kind which buffer
  --texture WORDS     such as loam or "silty clay"
  --organic-matter S  such as "4 %"
  --size SIZE         such as "4 x 8 ft"; or --area "50 sq ft"
  --depth LENGTH      how deep you will mix it in, such as "6 in"
  --plants LIST       such as tomato,carrot
  --target LOW-HIGH   your own range, such as 6.0-6.8
  --situation WORDS   open ground, around plants, lawn
  --medium WORDS      mineral, organic, mix, soilless
  --magnesium S       such as "80 ppm"; also --cec, --acidity, --carbonate
  --fizz WORDS        vinegar: silent, heard only, mild, vigorous
  --by WORDS          laboratory (default), slurry-meter, colour-kit, strip, probe
  --date DAY          day of the test (default today)
  --material NAME     material at hand, and --cce "95 %" from its label
  --region NAME       state or country, such as Oregon
${shared}  --why[=FIGURE]      show how the figures came about, or one of them
  --as-of DAY         plan as if today were DAY
`,
  table: `sorrel table TESTS.csv [options]

Plans each row of a table of soil tests, in order, as it is read. Bad rows are
left out and listed. The columns are told in docs/soil-test-table.md.

  --units metric|us   units of the amounts
  --json              one JSON object a line instead of CSV
  --bad FILE          write the rows that were left out, with the reasons
  --threads N         share a large table over N threads (as many as the machine has)
  --as-of DAY         plan as if today were DAY
  --region NAME       state or country of the laboratory
  --climate NAME      typical climate, for the dates
`,
  check: `sorrel check GARDEN [options]

Reads a garden document and reports what is wrong and how to mend it.

  --json              for machines
  --as-of DAY         check dates as if today were DAY
`,
  plants: `sorrel plants [WORDS] [options]

Lists plants with the pH they want; with WORDS only those that match.

  --pdf FILE          print the page of the one plant that WORDS name
  --in GARDEN         with the places of this garden, and whether they suit it
  --units metric|us   units of the printed page
  --json              for machines
`,
  materials: `sorrel materials [WORDS] [options]

Lists materials that move pH, and those that only seem to.

  --json              for machines
`,
  methods: `sorrel methods [options]

Lists the published methods that read a soil test.

  --json              for machines
`,
  cite: `sorrel cite KEY ... [options]

Says where a figure comes from. KEY is what stands behind "Source".

  --json              for machines
`,
  schema: `sorrel schema [garden | plan | forecast | account | learned | compare | usable | sender]

Prints the JSON Schema (2020-12) of the garden document, or of what a command
prints with --json.
`,
  gardens: `sorrel gardens --store STORE [options]

Lists the gardens of the record.

  --store STORE       a SQLite file, or a postgres: address
  --json              for machines
`,
  import: `sorrel import GARDEN --store STORE [options]

Puts a garden document, YAML or JSON, into the record as a new garden; or reads
in what sorrel export --record wrote, which may be done twice without harm.

  --store STORE       a SQLite file, made when it is not there, or a postgres:
                      address
  --by NAME           who writes (default me)
`,
  export: `sorrel export --store STORE [options]

Prints a garden of the record as a garden document, ready for sorrel plan.

  --store STORE       a SQLite file, or a postgres: address
  --garden NAME       which garden, by name or id
  --record            everything ever written in it, with its photos
`,
};
