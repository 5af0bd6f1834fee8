import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CheckCase } from '../adapter.ts';
import { readCases } from '../cases.ts';
import { compare } from '../compare.ts';
import { readKey } from './key-unit.ts';
import { units } from './units.ts';

const cases = new URL('../cases/', import.meta.url);
const shipped = readdirSync(cases).flatMap((file) => readCases(readFileSync(new URL(file, cases), 'utf8')).cases);

const row = (inputs: CheckCase['inputs'], expected: CheckCase['expected'], tolerance = ''): CheckCase => ({
  id: 'x',
  title: '',
  inputs,
  expected,
  tolerance,
  source: '',
  basis: '',
  note: '',
});
const ours = (check: CheckCase) => units.find((one) => one.accepts(check))?.compute(check);

describe('the units adapters', () => {
  it('answers each shipped case it accepts within its tolerance, and only one adapter claims it', () => {
    const claimed = shipped.filter((check) => units.some((one) => one.accepts(check)));
    expect(claimed.length).toBeGreaterThan(0);
    for (const check of claimed) {
      expect(units.filter((one) => one.accepts(check)).length, check.id).toBe(1);
      const verdict = compare(check, ours(check) ?? {});
      expect(verdict.within, `${check.id} ${JSON.stringify(verdict.lines)}`).toBe(true);
    }
  });

  // Neighbours of the shipped cases; figures by definition of the units (EXACT) or by rounded molar masses (CALC).
  it.each([
    [{ lb_per_acre: 100 }, { kg_per_ha: 112.085, g_m2: 11.2085 }],
    [{ oz_per_sq_yd: 4 }, { g_m2: 135.623, lb_per_acre: 1210 }],
    [{ t_ha: [1, 2.5] }, { g_m2: [100, 250] }],
    [{ element: 'Mg', mg_kg: 121.525 }, { cmolc_kg: 1 }],
    [
      { element: 'K', cmolc_kg: 0.5 },
      { mg_kg: 195.49, lb_per_acre: 390.98 },
    ],
    [{ P2O5_lb: 10 }, { P_lb: 4.3641 }],
    [{ S_kg: 1 }, { SO4_kg: 2.99613 }],
    [{ caco3: 150.129 }, { meq_L: 3 }],
    [{ mg_L_CaCO3: 100 }, { mg_L_HCO3: 121.929 }],
    [{ deg_dH: 8 }, { mg_L_CaCO3: 142.784 }],
    [{ temp_F: 50 }, { temp_C: 10 }],
    [{ EC_mmho_cm: 2 }, { dS_m: 2, uS_cm: 2000 }],
    [{ lb_per_100ft2: 5, area_ft2: 32 }, { lb: 1.6 }],
    [{ m: [1.2, 2.4], depth_cm: 15 }, { L: 432 }],
    [{ depth_cm: 20, bulk_density: 1.2, area_ha: 1 }, { t: 2400 }],
    [{ US_cups: 2, density_g_mL: 0.6 }, { g: 283.906 }],
    [{ molarity: 1, salt: 'KCl', litres: 0.5 }, { g: 37.274 }],
    [{ g: 74.548, salt: 'KCl', litres: 1 }, { molarity: 1 }],
    [{ slurry: '1:2 water', add_equal_volume_M: 0.02 }, { final_M: 0.01 }],
    [{ om_pct: 4 }, { 'oc_1.724': 2.32019 }],
    [
      { soil_g: 10, extract_mL: 100, reading_mg_L: 2, element: 'Ca' },
      { mg_kg: 20, cmolc_kg: 0.0998 },
    ],
    [{ kg_CaCO3: 50.043 }, { kmol_H: 1 }],
  ])('%o is %o', (inputs, expected) => {
    const verdict = compare(row(inputs, expected, '0.001'), ours(row(inputs, expected)) ?? {});
    expect(JSON.stringify(verdict.lines.filter(({ within }) => !within))).toBe('[]');
  });

  // Shapes that belong to other rooms, or mean something a conversion cannot know.
  it.each([
    [{ ash_lb: 20 }, { lime_lb: 10 }],
    [{ CaCO3_kg: 1 }, { S_kg: 0.3204 }],
    [{ lead_ppm: 250 }, { above_screening: true }],
    [{ recommended_lb_per_100ft2: 5, cce_pct: 70 }, { material_lb_per_100ft2: 7 }],
    [{ need_lb_per_1000_sqft: 36 }, { first_lb: 24 }],
    [{ S_mg_per_kg: 100, T: 30, days: 70 }, { oxidised_pct_low: 39 }],
    [{ lb: 1 }, { ft: 1 }],
    [{ pH: 5 }, { lb_per_acre: 1 }],
    [{ slurry: 'thick', add_equal_volume_M: 0.02 }, { final_M: 0.01 }],
    [{}, { lb: 1 }],
  ])('leaves %o to others', (inputs, expected) => {
    expect(ours(row(inputs, expected))).toBeUndefined();
  });
});

describe('keys', () => {
  it.each([
    ['lb_per_1000_sqft', 'lb/1000 sq ft', undefined],
    ['mg_kg', 'mg/kg', undefined],
    ['Ca_mg_kg', 'mg/kg', 'Ca'],
    ['P2O5_lb', 'lb', 'P2O5'],
    ['hco3', 'mg/L', 'HCO3'],
    ['Mg_ha', 't/ha', undefined],
    ['bulk_density', 'g/cm³', undefined],
  ])('%s', (key, symbol, subject) => {
    const read = readKey(key);
    expect(read?.unit.symbol).toBe(symbol);
    expect(read?.subject).toBe(subject);
  });

  it.each(['lime_lb', 't_per_ha_20cm', 'short_ton_per_acre_8in', 'pH', 'final_pH_below', ''])('not %s', (key) =>
    expect(readKey(key)).toBeUndefined(),
  );
});
