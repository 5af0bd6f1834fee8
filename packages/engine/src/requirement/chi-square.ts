/**
 * Upper 5 % points of the chi-square distribution for 1 to 15 degrees of freedom: exact quantiles, rounded to three
 * places. Any statistical table has them. [common-practice]
 */
const upperFivePerCent = [
  3.841, 5.991, 7.815, 9.488, 11.07, 12.592, 14.067, 15.507, 16.919, 18.307, 19.675, 21.026, 22.362, 23.685, 24.996,
] as const;

/**
 * Value that chi-square passes by chance in 5 % of cases.
 *
 * @param degrees 1 to 15
 * @throws RangeError beyond
 */
export function chiSquareLimit(degrees: number): number {
  const limit = upperFivePerCent[degrees - 1];
  if (limit === undefined) throw new RangeError(`no chi-square quantile for ${degrees} degrees of freedom`);
  return limit;
}
