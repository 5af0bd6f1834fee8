/** What the `document` room says, one template a code. `{name}` stands for a parameter of the message. */
export const document = {} as const;
