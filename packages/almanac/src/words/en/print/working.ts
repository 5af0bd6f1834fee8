/** How the figures came about. */
export const working = {
  'print.working': 'How the figures came about',
  'print.working-earlier': 'Figures 1 to {number} lead up to these. They stand in the full working.',
  'print.working-figure': 'Figure',
  'print.working-value': 'Value',
  'print.working-formula': 'Formula',
  'print.working-with': 'With',
  'print.working-source': 'Sources',
  'print.term': '{symbol} = {value} ({origin})',
  'print.origin-entered': 'entered',
  'print.origin-step': 'from {number}',
  'print.origin-choice': 'our choice',
  'print.working-sources': 'Sources in full',
  'print.working-need': 'Need',
  'print.need-lime': 'about {best} of pure calcium carbonate (8 times in 10 it is {range})',
  'print.need-acid': 'acid worth about {best} of calcium carbonate (8 times in 10 it is {range})',
} as const;
