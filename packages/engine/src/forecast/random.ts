import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Random {
  /** Uniform over (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Fills with standard normals: the same as calling `normal` for each, but faster. */
  normals(out: Float64Array): void;
}

/** Seeded random numbers (xoroshiro128+, normals by Marsaglia's polar method): the same seed gives the same numbers everywhere. */
export function createRandom(seed: number): Random {
  const generator = xoroshiro128plus(seed | 0);
  const uniform = () => ((generator.next() >>> 0) + 0.5) / 4294967296;
  let spare = Number.NaN;
  const normals = (out: Float64Array) => {
    let i = 0;
    if (!Number.isNaN(spare) && out.length > 0) {
      out[i++] = spare;
      spare = Number.NaN;
    }
    while (i < out.length) {
      const a = 2 * uniform() - 1;
      const b = 2 * uniform() - 1;
      const square = a * a + b * b;
      if (square >= 1 || square === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      out[i++] = a * scale;
      if (i < out.length) out[i++] = b * scale;
      else spare = b * scale;
    }
  };
  const one = new Float64Array(1);
  return {
    uniform,
    normals,
    normal() {
      normals(one);
      return one[0] as number;
    },
  };
}
