import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Random {
  /** Uniform over (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/** Seeded random numbers (xoroshiro128+, normals by Marsaglia's polar method): the same seed gives the same numbers everywhere. */
export function createRandom(seed: number): Random {
  const generator = xoroshiro128plus(seed | 0);
  const uniform = () => ((generator.next() >>> 0) + 0.5) / 4294967296;
  let spare = 0;
  let hasSpare = false;
  return {
    uniform,
    normal() {
      if (hasSpare) {
        hasSpare = false;
        return spare;
      }
      for (;;) {
        const a = 2 * uniform() - 1;
        const b = 2 * uniform() - 1;
        const square = a * a + b * b;
        if (square >= 1 || square === 0) continue;
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = b * scale;
        hasSpare = true;
        return a * scale;
      }
    },
  };
}
