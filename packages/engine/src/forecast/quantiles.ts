/** Lowest and highest pH counted; beyond lies in the outermost cell. */
const LOW = 1;
const HIGH = 12;
/** Width of a cell 1/512 pH: a quantile is right to 0.002. */
const PER_PH = 512;

/** Counts of pH values in narrow cells: quantiles of thousands of members without sorting them. */
export class PhCounts {
  readonly #cells = new Int32Array((HIGH - LOW) * PER_PH);
  #first = this.#cells.length;
  #last = -1;
  #total = 0;

  add(ph: number): void {
    const cell = Math.min(this.#cells.length - 1, Math.max(0, ((ph - LOW) * PER_PH) | 0));
    this.#cells[cell] = (this.#cells[cell] as number) + 1;
    if (cell < this.#first) this.#first = cell;
    if (cell > this.#last) this.#last = cell;
    this.#total++;
  }

  /** Quantiles at ascending shares (0 to 1), straight within a cell, written to `out`; then empties itself. */
  drain(shares: readonly number[], out: Float64Array): void {
    let cumulative = 0;
    let next = 0;
    for (let cell = this.#first; cell <= this.#last; cell++) {
      const here = this.#cells[cell] as number;
      if (here === 0) continue;
      while (next < shares.length && (shares[next] as number) * this.#total <= cumulative + here) {
        const within = ((shares[next] as number) * this.#total - cumulative) / here;
        out[next] = LOW + (cell + Math.max(0, within)) / PER_PH;
        next++;
      }
      cumulative += here;
    }
    this.#cells.fill(0, Math.max(0, this.#first), this.#last + 1);
    this.#first = this.#cells.length;
    this.#last = -1;
    this.#total = 0;
  }
}
