export * from './availability.ts';
export * from './chemistry.ts';
export * from './compare-usable.ts';
export * from './disease-target.ts';
export * from './diseases.ts';
export * from './extractant-fit.ts';
export * from './level-class.ts';
export * from './manganese-index.ts';
export * from './media-extract.ts';
export * from './next-look.ts';
export * from './nutrient.ts';
export * from './place-nutrients.ts';
export * from './pot-flag.ts';
export * from './questions.ts';
export { type Candidate, type SymptomEvidence, symptomCandidates } from './symptoms.ts';
export * from './usable-picture.ts';
export {
  type NutrientVerdict,
  nutrientVerdict,
  nutrientVerdicts,
  type Verdict,
  type VerdictSetting,
} from './verdict.ts';
export * from './weeds.ts';
