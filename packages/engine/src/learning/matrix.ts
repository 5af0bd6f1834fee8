/** Small dense matrices, row by row in one array. Only what the sampler needs. */

/**
 * Lower triangle L of a symmetric positive matrix, `A = L Lᵀ` (Cholesky).
 *
 * @param size rows of the square matrix
 * @throws RangeError when the matrix is not positive
 */
export function cholesky(matrix: Float64Array, size: number): Float64Array {
  const lower = new Float64Array(size * size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j] as number;
      for (let k = 0; k < j; k++) sum -= (lower[i * size + k] as number) * (lower[j * size + k] as number);
      if (i !== j) lower[i * size + j] = sum / (lower[j * size + j] as number);
      else if (sum > 0) lower[i * size + i] = Math.sqrt(sum);
      else throw new RangeError('the matrix is not positive');
    }
  return lower;
}

/** Solves `L x = b` for a lower triangle; `b` is overwritten with x. */
export function forwardSolve(lower: Float64Array, size: number, b: Float64Array): Float64Array {
  for (let i = 0; i < size; i++) {
    let sum = b[i] as number;
    for (let k = 0; k < i; k++) sum -= (lower[i * size + k] as number) * (b[k] as number);
    b[i] = sum / (lower[i * size + i] as number);
  }
  return b;
}

/** Solves `L Lᵀ x = b`; `b` is overwritten with x. */
export function choleskySolve(lower: Float64Array, size: number, b: Float64Array): Float64Array {
  forwardSolve(lower, size, b);
  for (let i = size - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let k = i + 1; k < size; k++) sum -= (lower[k * size + i] as number) * (b[k] as number);
    b[i] = sum / (lower[i * size + i] as number);
  }
  return b;
}

/** Sum of the logarithms of the diagonal: half the logarithm of the determinant of `L Lᵀ`. */
export function logDiagonal(lower: Float64Array, size: number): number {
  let sum = 0;
  for (let i = 0; i < size; i++) sum += Math.log(lower[i * size + i] as number);
  return sum;
}
