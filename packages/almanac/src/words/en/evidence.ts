/** What the `evidence` room says, one template a code. `{name}` stands for a parameter of the message. */
export const evidence = {} as const;
