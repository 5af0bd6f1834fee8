/** What the `evidence` room says, one template a code. `{name}` stands for a parameter of the message. */
export const evidence = {
  'evidence.test-in-future': 'The test dated {date} lies in the future, so it is not used. Check its date.',
  'evidence.other-scale':
    'This test was made another way than the others. Potting-mix tests and soil tests cannot be mixed.',
  'evidence.before-application':
    'The test of {date} is older than the last material you spread, so it no longer tells today’s pH.',
  'evidence.changed-since':
    'Something was spread after the test of {date}. The soil may have changed. Test again before the next dose.',
  'evidence.salty-cacl2':
    'This pH was read in a salt solution and the soil is salty. It cannot be turned into a water pH. Ask the laboratory for pH in water.',
  'evidence.water-measured': 'The laboratory also measured pH in water that day. The measured figure is used.',
  'evidence.home-differs':
    'Your home reading of {home} is far from the laboratory’s {lab}. The laboratory’s is used. Test again if the soil may have changed.',
  'evidence.home-only':
    'Only home readings are known. They can rank beds and warn you, but a first dose needs a laboratory test.',
  'evidence.few-cores':
    'This sample was made of {cores} cores. Take 12 next time: few cores can miss the true middle of the bed.',
  'evidence.method-unstated':
    'The report does not say how pH was read. It is taken as pH in water. Ask the laboratory: a salt pH reads about half a unit lower.',
  'evidence.converted': 'pH was read in a salt solution. It was turned into a water pH, which adds some error.',
  'evidence.autumn-test':
    'This is an autumn test. Water pH reads 0.1 to 0.3 lower in autumn than in spring, and more after a dry summer. Always test in the same season.',
  'evidence.soon-after-application':
    'The test of {date} was taken less than three months after material was spread. The soil had not settled.',
  'evidence.old-test': 'The newest test is {years} years old. Test again before you spread anything.',
  'evidence.tests-differ': 'Your tests differ by more than their errors explain. The answer is less sure. Test again.',
  'evidence.texture-sum':
    'Sand, silt and clay add up to {sum} %, not 100 %. They were scaled to fit. Check them against the report.',
  'evidence.vinegar-silent': 'No fizz with vinegar proves nothing: a limy soil can stay silent.',
  'evidence.vinegar-fizz': 'The soil fizzes with vinegar, so it holds lime.',
  'evidence.acid-fizz': 'The soil fizzes with acid, so it holds lime.',
} as const;
