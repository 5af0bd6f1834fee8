/** jStat ships no types; only what the tests compare against is declared. */
declare module 'jstat' {
  export const jStat: {
    normal: { cdf(x: number, mean: number, sd: number): number; inv(p: number, mean: number, sd: number): number };
    chisquare: { cdf(x: number, df: number): number; inv(p: number, df: number): number };
    studentt: { cdf(x: number, df: number): number; inv(p: number, df: number): number };
  };
}
