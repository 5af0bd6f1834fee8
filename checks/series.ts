// Forecasts every published time series from its inputs alone and sets the ensemble beside what was observed.
// Prints the table and writes docs/forecast-against-publications.md (`--no-write` leaves the page alone).
import { writeFileSync } from 'node:fs';
import { series } from './series-cases.ts';
import { forecastSeries, page, summary } from './series-report.ts';

const results = series.map(forecastSeries);
console.log(summary(results));
if (!process.argv.includes('--no-write'))
  writeFileSync(new URL('../docs/forecast-against-publications.md', import.meta.url), page(results));
