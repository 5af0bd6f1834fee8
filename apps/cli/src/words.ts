const helpHint = (command: string): string => `See: sorrel ${command} --help`;

/** What the command line says of its own; sentences about soil come from the almanac's catalogue, `--help` from `help.ts`. */
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
