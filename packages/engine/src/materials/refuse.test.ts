import { materialOf, materials } from '@sorrel/almanac/materials';
import { en } from '@sorrel/almanac/words';
import { describe, expect, it } from 'vitest';
import { cautionsFor } from './cautions.ts';
import { defaultProduct, productFrom } from './product.ts';
import { refusalFor, type UseContext } from './refuse.ts';

const sour: UseContext = { situation: 'open ground', presentPh: 5.2, targetPh: 6.5, home: true };
const limy: UseContext = { situation: 'open ground', presentPh: 6.9, targetPh: 5.5, carbonate: 0, home: true };
const refused = (key: string, context: UseContext) =>
  refusalFor(defaultProduct(key), context)?.code.replace('materials.refuse-', '');

describe('refusals', () => {
  it('let good materials through', () => {
    for (const key of [
      'calcitic-limestone',
      'dolomitic-limestone',
      'pelletized-calcitic',
      'oyster-shell-flour',
      'eggshell-flour',
      'wood-ash-stove',
    ])
      expect(refused(key, sour), key).toBeUndefined();
    for (const key of ['sulfur-powder', 'sulfur-granular', 'ferrous-sulfate'])
      expect(refused(key, limy), key).toBeUndefined();
  });

  // OSUHYD (hydrated lime), OSUASH and NCARCH91 (ash), EGGAL (eggshell, memory), SCG24, OSUPINE, UMASSACID.
  it.each([
    ['hydrated-lime', 'caustic-lime'],
    ['quicklime', 'caustic-lime'],
    ['dolomitic-hydrate', 'caustic-lime'],
    ['wood-ash-treated', 'dirty-ash'],
    ['coal-ash', 'dirty-ash'],
    ['eggshell-crushed', 'coarse-eggshell'],
    ['sulfur-pastilles', 'whole-pastilles'],
    ['sulfuric-acid', 'strong-acid'],
    ['gypsum', 'gypsum'],
    ['epsom-salt', 'neutral-salt'],
    ['vinegar', 'vinegar'],
    ['pine-needles', 'pine-needles'],
    ['coffee-grounds', 'coffee'],
    ['kiln-dust', 'needs-analysis'],
    ['slag', 'needs-analysis'],
    ['biochar', 'needs-analysis'],
    ['wood-ash-boiler', 'needs-analysis'],
  ])('say no to %s', (key, reason) => {
    expect(refused(key, sour)).toBe(reason);
  });

  it('hold for rows of the almanac as well', () => {
    const row = materialOf('hydrated-lime');
    expect(row && refusalFor(row, sour)?.code).toBe('materials.refuse-caustic-lime');
  });

  it('let a by-product through once it has its own analysis', () => {
    const slag = productFrom('slag', { neutralisingValue: 0.7 });
    expect(slag.ok && refusalFor(slag.value, sour)).toBeUndefined();
  });

  it('stop lime and ash at the target and at pH 7', () => {
    expect(refused('calcitic-limestone', { ...sour, presentPh: 6.5 })).toBe('lime-not-needed');
    expect(refused('wood-ash-stove', { ...sour, presentPh: 7, targetPh: 7.5 })).toBe('lime-neutral');
  });

  it('keep ash from acid-loving plants and potatoes', () => {
    expect(refused('wood-ash-stove', { ...sour, plantsReaction: 'acid-loving' })).toBe('ash-acid-plants');
    const plant = (key: string) => ({ ...sour, plants: [{ key, name: key }] });
    expect(refused('wood-ash-stove', plant('blueberry-highbush'))).toBe('ash-acid-plants');
    expect(refused('wood-ash-stove', plant('potato'))).toBe('ash-potato');
    expect(refused('wood-ash-stove', plant('sweet-potato'))).toBeUndefined();
  });

  // WISULF, acidification section 4 (free lime); EPA_2024 and FLINT_LEAD (lead).
  it('stop acid in limy soil, unknown limy soil, lead and sour soil', () => {
    expect(refused('sulfur-powder', { ...limy, carbonate: 0.02 })).toBe('limy-soil');
    expect(refused('sulfur-powder', { situation: 'open ground', presentPh: 7.8, targetPh: 6 })).toBe('test-lime-first');
    expect(refused('sulfur-powder', { ...limy, lead: 150e-6 })).toBe('lead');
    expect(refused('sulfur-powder', { ...limy, lead: 40e-6 })).toBeUndefined();
    expect(refused('sulfur-powder', { ...limy, presentPh: 5.4 })).toBe('acid-not-needed');
  });

  it('keep aluminum for hydrangeas', () => {
    expect(refused('aluminum-sulfate', limy)).toBe('aluminium');
    expect(
      refused('aluminum-sulfate', { ...limy, plants: [{ key: 'hydrangea-blue', name: 'Hydrangea' }] }),
    ).toBeUndefined();
  });

  // MOMEDIA: iron sulfate burns plants in a mix; acidification section 11: powder only.
  it('protect pots', () => {
    const pot: UseContext = { ...limy, situation: 'container', medium: 'soilless' };
    expect(refused('ferrous-sulfate', { ...pot, planted: true })).toBe('planted-pot');
    expect(refused('sulfur-granular', pot)).toBe('granules-pot');
    expect(refused('sulfur-powder', pot)).toBeUndefined();
  });

  it('let only trained growers near strong acid', () => {
    expect(refused('sulfuric-acid', { ...limy, home: false })).toBeUndefined();
    expect(refused('sulfuric-acid', { situation: 'open ground' })).toBe('strong-acid');
  });

  it('are all in the words, and each says what to do instead', () => {
    for (const [code, sentence] of Object.entries(en))
      if (code.startsWith('materials.refuse-'))
        expect(sentence, code).toMatch(
          /\b(Use|use|Leave|Grow|Compost|To raise|To lower|Water with|look for|Ask for)\b/,
        );
    for (const row of materials) if (row.refused !== undefined) expect(row.refused in en, row.key).toBe(true);
  });
});

describe('cautions', () => {
  const codes = (key: string, context: Parameters<typeof cautionsFor>[1]) =>
    cautionsFor(defaultProduct(key), context).map(({ code }) => code.replace('materials.caution-', ''));

  it('travel with every material, worst first and the label last', () => {
    for (const row of materials) {
      const found = codes(row.key, { situation: 'open ground' });
      expect(found.at(-1), row.key).toBe('label');
      expect(new Set(found).size, row.key).toBe(found.length);
    }
    expect(codes('quicklime', { situation: 'open ground' })[0]).toBe('caustic');
    // ICSC1166: sulfur dust burns and explodes.
    expect(codes('sulfur-powder', { situation: 'open ground' })[0]).toBe('sulfur-fire');
  });

  it('keep water and children unless the person said there are none', () => {
    expect(codes('calcitic-limestone', { situation: 'lawn' })).toEqual(expect.arrayContaining(['water', 'children']));
    const none = codes('calcitic-limestone', { situation: 'lawn', nearOpenWater: false, childrenOrPets: false });
    expect(none).not.toContain('water');
    expect(none).not.toContain('children');
  });

  it('warn of heat for sulfur on lawns only', () => {
    expect(codes('sulfur-granular', { situation: 'lawn' })).toContain('lawn-heat');
    expect(codes('sulfur-granular', { situation: 'open ground' })).not.toContain('lawn-heat');
  });
});

describe('under organic certification', () => {
  const organic = { ...sour, certifiedOrganic: true };
  // What certifiers allow is the almanac's own column, from memory; the rule that only a plain yes is used is our own.
  it('only what certifiers usually allow is used', () => {
    for (const row of materials.filter(({ role, refused: never }) => role === 'liming' && never === undefined)) {
      if (row.needsAnalysis) continue;
      const reason = refused(row.key, organic);
      if (row.organic === 'yes') expect(reason, row.key).toBe(refused(row.key, sour));
      else expect(reason, row.key).toBe(row.organic === 'no' ? 'not-organic' : 'ask-certifier');
    }
    expect(refused('potassium-bicarbonate', organic)).toBe('ask-certifier');
    expect(refused('ferrous-sulfate', { ...limy, certifiedOrganic: true })).toBe('ask-certifier');
    expect(refused('sulfur-powder', { ...limy, certifiedOrganic: true })).toBeUndefined();
  });
});
