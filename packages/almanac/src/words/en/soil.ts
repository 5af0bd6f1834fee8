/** What the `soil` room says, one template a code. `{name}` stands for a parameter of the message. */
export const soil = {
  'soil.texture-word-differs': 'The report says {word}, but its sand, silt and clay make a {name}. The sizes are used.',
  'soil.texture-near-line': 'This soil is a {name}, but within 1 % of {other}. Either name is fair.',
  'soil.sodium-suspected':
    'A pH of {ph} is too high for lime alone. Sodium is likely, and that needs another treatment. Ask your extension office or adviser before you add anything.',
  'soil.lime-likely':
    'A pH this high nearly always means free lime. Have the laboratory measure carbonate before you try to lower it.',
  'soil.test-for-lime':
    'Test for free lime first: put a drop of vinegar on dry soil, or better, have carbonate measured. Lime eats the acid before the pH moves.',
  'soil.lime-workable': 'The soil holds a little lime ({fraction}). It can be made sourer, but it takes 1 to 2 years.',
  'soil.lime-small-beds':
    'The soil holds lime ({fraction}). Only a small bed can be made sourer, over 2 to 4 years. Digging it out may be easier.',
  'soil.lime-too-much':
    'The soil holds too much lime ({fraction}) to be made sourer in the ground. Use pots, a raised bed on a barrier, or plants that like lime.',
  'soil.lime-by-fizz': 'How much lime there is was only guessed from the fizz. A laboratory can measure it.',
  'soil.class-guess': 'Texture by jar or by feel can be one class off, so the first dose is kept small.',
} as const;
