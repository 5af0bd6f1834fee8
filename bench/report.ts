export const fixed = (value: number, digits = 1) => value.toFixed(digits);

/** Whether a ratio keeps its bound and its aim. */
export const verdict = (ratio: number, bound: number, aim?: number) =>
  ratio > bound
    ? '**outside the bound**'
    : aim === undefined
      ? 'within'
      : ratio > aim
        ? 'within, above the aim'
        : 'within the aim';
