import { conversion } from '@sorrel/almanac/conversions';
import type { NutrientLevel, SoilTest } from '../evidence/soil-test.ts';
import { isMediaExtract } from '../nutrients/media-extract.ts';
import type { Report } from './fields.ts';
import { limits } from './limits.ts';
import { measureAny } from './measure.ts';
import type { Path } from './path.ts';
import type { TestEntry } from './schema.ts';

/**
 * Levels of nutrients in SI, each with its extractant: soil per weight (lb/acre means 2,000,000 lb of soil), potting
 * mixes per volume of extract; ppm of an extract is mg/L.
 */
export function readNutrients(entry: Partial<TestEntry>, at: Path, report: Report): Pick<SoilTest, 'nutrients'> {
  if (entry.nutrients === undefined) return {};
  const nutrients: NutrientLevel[] = [];
  entry.nutrients.forEach(({ nutrient, by, level }, index) => {
    const path = [...at, 'nutrients', index, 'level'];
    const value = isMediaExtract(by) ? inExtract(level, path, report) : inSoil(level, path, report);
    if (value !== undefined) nutrients.push({ nutrient, extractant: by, value });
  });
  return { nutrients };
}

function inSoil(level: string, path: Path, report: Report): number | undefined {
  const given = measureAny(level, ['massFraction', 'massPerArea'], limits.nutrient, path, report);
  if (given?.dimension !== 'massPerArea') return given?.value;
  const pounds = (given.value * 1000) / conversion('lb/acre', 'g/m2');
  return (pounds / conversion('mg/kg', 'lb/acre (6 2/3 in, 2e6 lb soil)')) * 1e-6;
}

function inExtract(level: string, path: Path, report: Report): number | undefined {
  const given = measureAny(level, ['massPerVolume', 'massFraction'], limits.extract, path, report);
  // A litre of extract weighs a kilogram.
  return given?.dimension === 'massFraction' ? given.value * 1000 : given?.value;
}
