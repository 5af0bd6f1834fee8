/** What the `requirement` room says, one template a code. `{name}` stands for a parameter of the message. */
export const requirement = {
  'requirement.outside-zero': 'This method prints no lime for a figure like this one.',
  'requirement.outside-close': 'The soil is already so near to this method’s target that its rate tells nothing.',
  'requirement.outside-range': 'This lies outside what the method covers: {domain}.',
  'requirement.outside-medium': 'This method was made for ordinary mineral soil, not for this kind of fill.',
  'requirement.outside-target':
    'This method only takes care of aluminium, up to about pH 5.5. The target here is higher.',
  'requirement.outside-limy': 'There is lime in the soil, and that makes this figure too large.',
  'requirement.outside-cec':
    'The report does not say that its cation exchange capacity is for pH 7, so it cannot be used here. Ask the laboratory.',
  'requirement.outside-buffer':
    'There is no trusted table for the {buffer} buffer pH, and it means nothing in another table. Ask the laboratory for the lime rate it prints, with depth, target pH and kind of lime.',
  'requirement.outside-buffer-acidity':
    'This buffer pH is used through the exchangeable acidity on the report. Enter that figure, or the lime rate the laboratory prints.',
  'requirement.half-dose':
    'Only the texture of the soil is known. Put on no more than half of the lime, then test again.',
  'requirement.ask-buffer':
    'Ask the laboratory for a buffer pH and the name of its buffer, or for the lime rate it prints.',
  'requirement.ask-buffer-named': 'Ask the laboratory for the {what}, and for the lime rate it prints.',
  'requirement.ask-printed-rate':
    'Ask the laboratory for the lime rate it prints, with depth, target pH and kind of lime.',
  'requirement.ask-texture': 'Find out the texture of the soil: shake some in a jar of water and let it settle.',
  'requirement.ask-organic-matter': 'Find out how much organic matter the soil holds: most laboratories measure it.',
  'requirement.ask-region':
    'Say where the garden is, or which region the laboratory serves, so that the right table is read.',
  'requirement.ask-again':
    'The figures do not fit together. Check them against the report, and take a fresh sample before a large dose.',
  'requirement.ask-jar':
    'Try it first: stir a small measured dose of lime into a measured jar of the mix, keep it moist, and read the pH after two weeks.',
} as const;
