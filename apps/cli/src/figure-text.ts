/** What follows the whole number in a figure of up to three decimals: `.05`, `.5`, or nothing. */
const PARTS = Array.from({ length: 1000 }, (_, thousandths) =>
  thousandths === 0 ? '' : `.${String(thousandths).padStart(3, '0').replace(/0+$/, '')}`,
);
const LARGEST = 2 ** 30;

/**
 * A number as `String` writes it. Figures of up to three decimals, which nearly all of a table are, are put together
 * from whole numbers: that takes a third of the time.
 */
export function figureText(value: number): string {
  const thousandths = Math.round(value * 1000);
  if (thousandths / 1000 !== value || thousandths < 0 || thousandths > LARGEST) return String(value);
  return `${Math.floor(thousandths / 1000)}${PARTS[thousandths % 1000]}`;
}
