import type { LinearModel, Solved, Solver } from './solver.ts';

/** The part of the HiGHS package (WebAssembly) that is used; the instance its loader gives fits as it is. */
export interface HighsLike {
  createModel(source: {
    readonly numCols: number;
    readonly numRows: number;
    readonly colCost: Float64Array;
    readonly colLower: Float64Array;
    readonly colUpper: Float64Array;
    readonly rowLower: Float64Array;
    readonly rowUpper: Float64Array;
    readonly matrix: {
      readonly format: 'csr';
      readonly numRows: number;
      readonly numCols: number;
      readonly starts: Int32Array;
      readonly indices: Int32Array;
      readonly values: Float64Array;
    };
    readonly integrality: Int32Array;
  }): {
    readonly options: { set(values: Readonly<Record<string, number | boolean | string>>): unknown };
    readonly info: { get(name: string): number | bigint };
    run(): unknown;
    getModelStatus(): number;
    getObjectiveValue(): number;
    getSolution(): { readonly colValue: Float64Array };
    dispose(): void;
  };
}

/** Status numbers of HiGHS. */
const OPTIMAL = 7;
const INFEASIBLE = 8;
const UNBOUNDED_OR_INFEASIBLE = 9;

/**
 * A solver on a loaded HiGHS. Loading is the caller's: `await (await import('highs')).default()` in Node; in a browser
 * with `locateFile` for the file `highs.wasm`. Solving blocks, so a browser does it in a worker.
 *
 * @param seconds gives up after this long and says how far the best found may be from the optimum; never when left out
 */
export function highsSolver(highs: HighsLike, seconds?: number): Solver {
  const limit = seconds === undefined ? {} : { time_limit: seconds };
  return (model: LinearModel, nodes?: number): Solved => {
    const numCols = model.cost.length;
    const numRows = model.rowLower.length;
    if (numCols === 0) return { status: 'optimal', objective: 0, bound: 0, values: model.cost };
    const instance = highs.createModel({
      numCols,
      numRows,
      colCost: model.cost,
      colLower: model.lower,
      colUpper: model.upper,
      rowLower: model.rowLower,
      rowUpper: model.rowUpper,
      matrix: {
        format: 'csr',
        numRows,
        numCols,
        starts: model.starts,
        indices: model.columns,
        values: model.values,
      },
      integrality: model.whole,
    });
    try {
      // The usual gap of one in ten thousand is no proof; a tenth of a gram is.
      instance.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-4, ...limit });
      if (nodes !== undefined) instance.options.set({ mip_max_nodes: nodes });
      instance.run();
      const status = instance.getModelStatus();
      if (status === INFEASIBLE || status === UNBOUNDED_OR_INFEASIBLE)
        return { status: 'infeasible', objective: Infinity, bound: Infinity, values: undefined };
      const found = Number(instance.info.get('primal_solution_status')) === 2;
      const objective = found ? instance.getObjectiveValue() : Number.POSITIVE_INFINITY;
      return {
        status: status === OPTIMAL ? 'optimal' : 'stopped',
        objective,
        bound: status === OPTIMAL ? objective : Number(instance.info.get('mip_dual_bound')),
        values: found ? instance.getSolution().colValue : undefined,
      };
    } finally {
      instance.dispose();
    }
  };
}
