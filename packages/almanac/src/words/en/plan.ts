/** What the `plan` room says, one template a code. `{name}` stands for a parameter of the message. */
export const plan = {} as const;
