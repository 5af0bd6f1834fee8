/** What the `materials` room says, one template a code. `{name}` stands for a parameter of the message. */
export const materials = {} as const;
