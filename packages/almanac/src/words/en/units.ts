/** What the `units` room says, one template a code. `{name}` stands for a parameter of the message. */
export const units = {} as const;
