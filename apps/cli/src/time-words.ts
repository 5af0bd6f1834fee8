/** What the commands that look ahead and back say of their own; loaded only by them. */
export const timeWords = {
  axis: '  pH',
  chartKey: (median: string, half: string, most: string, nearly: string) =>
    `${median} most likely   ${half} 1 time in 2   ${most} 8 times in 10   ${nearly} 19 times in 20`,
  chartSigns: (test: string, today: string, retest: string) =>
    `${test} test with its error   ${today} today   ${retest} test again   * ends of what is wanted`,
  chartOdd: (sign: string) => `${sign} test that does not fit the others`,
  maybe: '(only if a retest asks for it)',

  forecastTitle: (withPlan: boolean) => (withPlan ? 'Forecast with the plan' : 'Forecast with nothing put on'),
  follows: { plan: 'With the plan', none: 'With nothing put on' },
  columns: ['Day', 'Most likely', '8 times in 10', 'In range'] as const,
  insideFrom: (day: string) => `Most likely in range from ${day}.`,
  insideNow: 'Most likely in range already.',
  insideNever: (day: string) => `Most likely not in range before ${day}.`,
  insideBy: (chance: string, day: string) => `Chance of having been in range by ${day}: ${chance}.`,
  overshootAbove: (ph: string, chance: string) => `Chance of ever passing ${ph}: ${chance}.`,
  overshootBelow: (ph: string, chance: string) => `Chance of ever falling below ${ph}: ${chance}.`,
  firstStep: (chance: string) => `With step 1 alone: ${chance}. A retest decides on the rest.`,
  retest: (day: string, why: string) => `Test again about ${day}. ${why}`,
  care: 'Mind',
  needsOnePlace: (names: readonly string[]) =>
    `--svg draws one place. Name it with --place. There are: ${names.join(', ')}.`,
  notYears: (text: string) => `--years is a number from 1 to 5, not "${text}".`,
  drawn: (file: string) => `Drawn to ${file}.`,

  accountTitle: 'What pushes the pH, as pure calcium carbonate',
  accountYear: (from: string, to: string) => `${from} to ${to}`,
  accountPh: (start: string, end: string) => `pH ${start} -> ${end}`,
  accountSum: 'All together',
  accountSame: 'A year like this with nothing new put on',
  accountSameText: (change: string, start: string, end: string) =>
    `comes to ${change}, which moves the pH from ${start} to ${end}.`,
  accountLeft: (amount: string, kind: 'lime' | 'sulfur') =>
    `Still to act at the end: ${amount} of ${kind}, as calcium carbonate.`,
  accountColumns: ['Entry', 'sours', 'sweetens'] as const,
  accountFoot:
    'Figures are for a square metre (or 100 square feet) of bed, from the middle course of the forecast; weights count as pure calcium carbonate. Plus sweetens, minus sours.',
  small: 'hardly anything',
  unreacted: 'not yet seen',
  entries: {
    lime: 'lime',
    'ash and fast lime': 'ash, fast lime',
    compost: 'compost',
    sulfur: 'sulfur',
    sulfates: 'iron, aluminum',
    'not mixed in': 'not reached yet',
    'rain and soil': 'rain and soil',
    fertilizer: 'feeds',
    water: 'water',
    crops: 'harvest',
    'organic matter': 'organic matter',
    leaching: 'washed out',
    aluminium: 'aluminum',
    carbonate: 'free lime',
    'exchange below': 'from below',
  },

  learnedTitle: 'What the beds have taught',
  learnedColumns: ['Test', 'pH', 'give or take', ''] as const,
  learnedFrom: 'learned from',
  phOnly: 'pH only',
  outlier: (ph: string) => `does not fit: about ${ph} expected`,
  nothingLearned: 'Nothing can be learned here yet.',
  noLessons:
    'There is no pH reading here, or nothing tells how much the soil resists, so there is nothing to learn from.',
  resists: (factor: string, low: string, high: string) =>
    `Resistance beside what was expected: ${factor} (8 times in 10 between ${low} and ${high}).`,
  usualResists: 'Resistance: as expected; no dressing has been judged by a test yet.',
  works: (of: string, factor: string) => `Speed of ${of} beside what was expected: ${factor}.`,
  drifts: (amount: string, range: string) =>
    `Acid this place makes by itself in a year, as lime: ${amount} (8 times in 10 it is ${range}).`,
  judged: (count: number) =>
    count === 1 ? '1 dressing judged by a later test.' : `${count} dressings judged by later tests.`,

  compareTitle: 'The ways open',
  compareColumns: ['Way', 'Cost', 'In range after', 'In range in a year', 'Goes too far', 'Jobs'] as const,
  kinds: {
    'do nothing': 'do nothing',
    'the plan': 'the plan',
    'all at once': 'all at once',
    'two steps': 'two steps',
    'faster material': 'faster material',
    'other plants': 'other plants',
    container: 'pots or raised bed',
  },
  now: 'now',
  months: (count: number) => (count === 1 ? '1 month' : `${count} months`),
  notWithin: 'not in 3 years',
  already: 'already',
  closed: 'closed',
  unknown: '?',
  compareFoot:
    'In range after: when the most likely pH is inside what the plants want. Goes too far: the chance of ever passing the safe end, every step counted. Jobs: times out to spread and to test. ? means that a price or a forecast is missing.',
  onlyMaterial: 'Material',
} as const;
