/** What the `soil` room says, one template a code. `{name}` stands for a parameter of the message. */
export const soil = {} as const;
