/** The work sheet and the shopping list. */
export const workSheet = {
  'print.work-sheet': 'Work sheet',
  'print.places': 'Place by place',
  'print.shopping': 'Shopping list',
  'print.shopping-none': 'Nothing has to be bought for the first steps.',
  'print.shop-product': 'Product',
  'print.shop-needed': 'Needed',
  'print.shop-on-hand': 'At hand',
  'print.shop-buy': 'Buy',
  'print.shop-bags': 'Bags',
  'print.shop-cost': 'About',
  'print.shop-bag': '{count} × {mass}',
  'print.shop-total': 'Together about',
  'print.shop-note': 'Only the first steps are on the list. Later ones wait for a retest.',
  'print.spread': '{mass} of {product}',
  'print.retest-box': 'Retest, {days}. {why}',
  'print.notes': 'Notes',
} as const;
