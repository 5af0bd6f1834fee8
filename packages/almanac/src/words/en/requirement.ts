/** What the `requirement` room says, one template a code. `{name}` stands for a parameter of the message. */
export const requirement = {} as const;
