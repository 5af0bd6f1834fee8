/** The garden: all places on one pH line. */
export const garden = {
  'web.garden-line': 'All places on one pH line',
} as const;
