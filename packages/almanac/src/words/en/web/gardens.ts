/** The first screen: which garden. */
export const gardens = {
  'web.gardens-title': 'Your gardens',
  'web.gardens-first': 'Keep every bed at the pH its plants need',
  'web.gardens-lead':
    'Sorrel reads your soil tests and says what each bed, plot and pot needs: how much of what, when, and when to leave it alone.',
  'web.gardens-look': 'Look around an invented garden',
  'web.gardens-look-text': 'Every figure in these gardens was made up. Change what you like.',
  'web.gardens-own': 'Start your own garden',
  'web.gardens-own-text': 'One place is enough to begin. You can do without a soil test at first.',
  'web.gardens-open': 'Open',
  'web.gardens-demo': 'invented',
  'web.places-one': '{count} place',
  'web.places-other': '{count} places',
  'web.start-name': 'Name of the garden',
  'web.start-name-hint': 'For example “Home” or “School garden”.',
  'web.start-name-missing': 'Give the garden a name, so that you find it again.',
  'web.start-go': 'Start this garden',
} as const;
