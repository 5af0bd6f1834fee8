/** What the methods that lower pH say, one template a code. `{name}` stands for a parameter of the message. */
export const lower = {
  'lower.carbonate-test-first':
    'Above pH {limit} the texture of a soil says nothing about the sulfur it takes. Test it for free lime first.',
  'lower.free-lime': 'This soil holds free lime. This is only for soil without it: {table}.',
  'lower.no-column': 'The {table} has no column for {texture}.',
  'lower.above-table': 'The {table} ends at pH {highest}.',
  'lower.below-table': 'The {table} does not go below pH {lowest}.',
  'lower.not-for-medium': 'The {table} is for mineral soil in the ground.',
  'lower.cec-inflated': 'Free lime makes the cation exchange capacity (CEC) on the report too high. It is not used.',
  'lower.cec-effective': 'An effective CEC leaves out part of what resists a change of pH. It is not used.',
} as const;
