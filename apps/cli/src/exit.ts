/** Exit codes, as `docs/cli.md` explains them. */
export const exit = {
  /** Everything was read and used. */
  fine: 0,
  /** Some entries could not be used; the rest was served. */
  partly: 1,
  /** Nothing could be done: no file, an empty file, or no usable entry in it. */
  nothing: 2,
  /** The command was not understood. */
  usage: 64,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];

/** Stops a command with a sentence for the person; `main` prints it and ends with the code. */
export class Stop extends Error {
  constructor(
    readonly code: ExitCode,
    message: string,
  ) {
    super(message);
  }
}
