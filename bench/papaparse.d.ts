/** The little of papaparse that the bench uses; the package brings no types. */
declare module 'papaparse' {
  const papaparse: { parse(text: string, config?: { skipEmptyLines?: boolean }): { data: string[][] } };
  export default papaparse;
}
