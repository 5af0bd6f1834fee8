import { dayHelp } from './day-words.ts';
import { intakeHelp } from './intake-words.ts';
import { nutrientHelp } from './nutrients-words.ts';
import { placingHelp } from './placing-words.ts';

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
