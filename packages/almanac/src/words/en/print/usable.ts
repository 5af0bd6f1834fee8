/** What plants can use at the pH of a place. */
export const usable = {
  'print.usable-title': 'What plants can use in {place}',
  'print.usable-title-all': 'What plants can use',
  'print.usable-find-out': 'Find out first',
  'print.usable-no-ph':
    'The pH of this place is not known, so nothing can be said about its nutrients. Have it tested.',
  'print.usable-today': 'pH today {ph}. The plan leaves it as it is.',
  'print.usable-today-planned': 'pH today {ph}, planned {planned}.',
  'print.usable-test': 'What the soil test says',
  'print.usable-no-levels':
    'No test of this place lists nutrients together with how they were measured, such as Mehlich-3, so nobody can say whether one is short or only locked. Buy no fertilizer on a guess.',
  'print.usable-nutrient': 'Nutrient',
  'print.usable-verdict': 'Verdict',
  'print.usable-why': 'Why, and what to do',
  'print.usable-verdict-enough-and-usable': 'enough and usable',
  'print.usable-verdict-enough-but-locked': 'enough but LOCKED',
  'print.usable-verdict-truly-short': 'truly SHORT',
  'print.usable-verdict-too-much': 'TOO MUCH',
  'print.usable-verdict-cannot-tell': 'cannot tell',
  'print.usable-change': 'What moving the pH would do',
  'print.usable-heed': 'Heed',
  'print.usable-lines': 'The lines in words',
  'print.usable-now': 'Today',
  'print.usable-then': 'Planned',
  'print.usable-said': '{nutrient}: {word}.',
  'print.usable-doubt': 'How far to trust this',
} as const;
