/**
 * A linear programme with whole-number columns, to be made as small as can be:
 * `rowLower <= A x <= rowUpper`, `lower <= x <= upper`. A is stored row after row, zeros left out.
 */
export interface LinearModel {
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 where a column must be whole. */
  readonly whole: Int32Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  /** Where each row begins in `columns`, with the end of the last. */
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
}

export interface Solved {
  /** `stopped`: a limit was reached; `values` holds the best found, when anything was. */
  readonly status: 'optimal' | 'infeasible' | 'stopped';
  readonly objective: number;
  /** No solution is better than this. */
  readonly bound: number;
  readonly values: Float64Array | undefined;
}

/**
 * Solves a model to the proven optimum, or says that there is no solution.
 *
 * @param nodes stops after this many branches with the best found so far; a first look that is cheap and the same each time
 */
export type Solver = (model: LinearModel, nodes?: number) => Solved;

/** Puts a model together row by row. */
export function modelBuilder() {
  const cost: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const whole: number[] = [];
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  const starts: number[] = [0];
  const columns: number[] = [];
  const values: number[] = [];
  return {
    column(costs: number, least: number, most: number, isWhole: boolean): number {
      cost.push(costs);
      lower.push(least);
      upper.push(most);
      whole.push(isWhole ? 1 : 0);
      return cost.length - 1;
    },
    /** Most a column can be. */
    most: (column: number): number => upper[column] as number,
    /** One entry of the row that `close` ends. */
    entry(column: number, value: number): void {
      columns.push(column);
      values.push(value);
    },
    close(least: number, most: number): void {
      starts.push(columns.length);
      rowLower.push(least);
      rowUpper.push(most);
    },
    /** A model of what is there so far; more may be added and taken again. */
    model: (): LinearModel => ({
      cost: Float64Array.from(cost),
      lower: Float64Array.from(lower),
      upper: Float64Array.from(upper),
      whole: Int32Array.from(whole),
      rowLower: Float64Array.from(rowLower),
      rowUpper: Float64Array.from(rowUpper),
      starts: Int32Array.from(starts),
      columns: Int32Array.from(columns),
      values: Float64Array.from(values),
    }),
  };
}

export type ModelBuilder = ReturnType<typeof modelBuilder>;
