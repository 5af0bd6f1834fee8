/** What the `sampling` room says, one template a code. */
export const sampling = {
  'sampling.alike': 'Same soil, same history and the same wish: one mixed sample tells for all of them.',
  'sampling.alone-soil': 'Nobody has said what soil this is, so it is sampled alone.',
  'sampling.alone-fill': 'A bed or pot filled with a mix is sampled alone, unless it was filled with the same load.',
  'sampling.alone-history': 'It was treated on other days or with other things than its neighbours.',
  'sampling.alone-target': 'Its plants want another pH than those beside it.',
  'sampling.alone-ph': 'Its last test differs from those of its neighbours by more than the error of a test.',
  'sampling.alone-different': 'No other place here has this soil, this depth and this use.',
  'sampling.when-same-season':
    'Your last test was of {date}. Sample at the same time of year, or the season looks like a change of the soil.',
  'sampling.when-after-application':
    'Material was spread on {date}. Wait three months, until {until}, or unmixed grains and salt spoil the test.',
  'sampling.when-first':
    'There is no test to compare with. Choose a time of year now, and keep to it for every later test.',
  'sampling.when-plan': 'The plan asks for a retest from {date}.',
  'sampling.spread-seen': 'From {count} pairs of your own tests, with what is usual where those say little.',
  'sampling.spread-usual': 'Usual spread of such ground; your own tests do not tell yet.',
  'sampling.spoil-metal-tools':
    'Galvanized, brass or copper tools and buckets. They shed zinc and copper. Use stainless steel and plastic.',
  'sampling.spoil-rusty-tools': 'Rusty tools. They shed iron.',
  'sampling.spoil-heat':
    'Drying with heat. It changes pH and nutrients. Spread the soil on paper and let it dry in the air.',
  'sampling.spoil-soon-after':
    'Sampling within three months of lime, sulfur, ash or fertilizer. Grains have not reacted, and salt lowers the pH.',
  'sampling.spoil-wet': 'Very wet ground. Cores smear, and soil without air reads another pH.',
  'sampling.spoil-mulch': 'Mulch, thatch and roots left in. Push them aside before you push in the corer.',
  'sampling.spoil-shallow':
    'Short cores in hard, dry ground. They read only the top. Every core goes to the full depth.',
  'sampling.spoil-other-season':
    'Another season than last time. pH in water reads 0.1 to 0.3 lower in autumn, and about 0.5 lower after a drought.',
  'sampling.spoil-odd-spots': 'Odd spots: the foot of a wall, an old ash heap, the edge of a path, a pet’s corner.',
  'sampling.spoil-other-laboratory':
    'Another laboratory, or another way of reading pH. Its offset looks like a change of the soil.',
} as const;
