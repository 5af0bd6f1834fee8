/** What the `learning` room says, one template a code. `{name}` stands for a parameter of the message. */
export const learning = {
  'learning.no-tests': 'There is no soil test to learn from yet.',
  'learning.one-test': 'One test alone teaches nothing about how this soil answers. The next test will.',
  'learning.nothing-judged':
    'Nothing was spread between the tests, so they do not show how much this soil resists a change.',
  'learning.resists-more':
    'Your soil resists {more} more than its texture and tests suggest: it needs that much more material for the same change. We are {sure} sure that it resists more. It could need between {low} and {high} times as much.',
  'learning.resists-less':
    'Your soil resists {less} less than its texture and tests suggest: it needs that much less material for the same change. We are {sure} sure that it resists less. It could need between {low} and {high} times as much.',
  'learning.as-expected':
    'Your soil answers about as its texture and tests suggest. It could need between {low} and {high} times as much material.',
  'learning.taught-little':
    'The tests so far teach almost nothing about how much this soil resists. We keep to what its texture and tests suggest.',
  'learning.taught-little-change':
    'The pH moved by {change} between the last two tests. That teaches almost nothing, because a test can be off by nearly as much. We keep to what texture and tests suggest.',
  'learning.capped':
    'A test asked for a bigger correction than one test may make. We changed our figure by half or double at most. The next test will show if more is needed.',
  'learning.outlier':
    'The test of {date} reads {seen}, but the others make us expect about {expected}. It still counts, but less. Check the entry, and test again if you can.',
  'learning.unexpected':
    'The test of {date} reads {seen}, but we expected about {expected}. One of the tests may be wrong, or something is not on record. Test again before you spread more.',
  'learning.lime-fast': 'Lime works about {factor} times as fast here as we thought.',
  'learning.lime-slow': 'Lime works about {factor} times as slowly here as we thought. Wait longer before you test.',
  'learning.sulfur-fast': 'Sulfur works about {factor} times as fast here as we thought.',
  'learning.sulfur-slow':
    'Sulfur works about {factor} times as slowly here as we thought. Wait longer before you add more.',
  'learning.rose': 'From {from} to {to} the pH rose by {change}. That is more than chance.',
  'learning.fell': 'From {from} to {to} the pH fell by {change}. That is more than chance.',
  'learning.no-change':
    'From {from} to {to} the pH differs by {change}. A difference below {needed} can be chance, so this is no sure change.',
  'learning.trend-falling': 'Over {tests} tests the pH falls by {slope} a year, give or take {error}.',
  'learning.trend-rising': 'Over {tests} tests the pH rises by {slope} a year, give or take {error}.',
  'learning.trend-unclear':
    'Over {tests} tests no sure trend can be seen: {slope} a year, give or take {error}. A slow drift needs about eight yearly tests.',
  'learning.too-soon':
    'The test of {date} came too soon after the material of {spread}. It tells the pH, but not how much the soil resists.',
  'learning.other-method':
    'The test of {date} was made by another method than the rest. It tells the pH, but not how much the soil resists.',
  'learning.other-depth':
    'The test of {date} was taken from another depth, so it is of another soil and teaches nothing here.',
  'learning.not-comparable': 'The pH of {date} cannot be turned into pH in water, so it is not learned from.',
  'learning.in-future': 'The test dated {date} lies in the future, so it is not used. Check its date.',
} as const;
