/** What the `forecast` room says, one template a code. `{name}` stands for a parameter of the message. */
export const forecast = {
  'forecast.retest-routine': 'Nothing is likely to change before then. Test again as a routine check.',
  'forecast.retest-settled': 'By then most of what you put on has done its work, so a test will show it.',
  'forecast.retest-open': 'By then the chance of being in range is {chance}. A test could change what you do next.',
  'forecast.retest-outside': 'By then the chance of being out of range is {chance}. Test before you put on more.',
  'forecast.danger-sour':
    'This could make the soil dangerously sour, below pH 4. Roots are harmed there and it is hard to undo. Use less.',
  'forecast.aluminium':
    'The pH could fall below 5. Below that, aluminium dissolves fast and can hurt roots. Test before adding more.',
  'forecast.carbonate':
    'This soil holds free lime. Acid is used up by the lime first, so the pH may fall a little and then rise again.',
  'forecast.sulfur-slow':
    'Sulfur works only in warm, moist soil, and it keeps working until it is used up. Do not add more because nothing seems to happen.',
  'forecast.wide-start':
    'The present pH is only roughly known, so the forecast is wide. A laboratory test would narrow it.',
  'forecast.typical-weather':
    'The weather is a typical one from memory, not yours. Your own monthly temperatures and rain would make the timing better.',
} as const;
