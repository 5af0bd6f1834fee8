export { type Alternative, type AlternativeKind, alternatives, isBeyond, isOpen } from './alternatives.ts';
export { type Cap, capFor } from './cap.ts';
export {
  type Foreseen,
  foresee,
  type Mark,
  type SeenTest,
  seenTests,
  yearOfTheSame,
} from './foresee.ts';
export { lessons } from './lessons.ts';
export { type OutlookOptions, outlook, outlookInput, outlookSketch } from './outlook.ts';
export * from './place.ts';
export { type GardenOptions, type GardenPlan, planGarden } from './plan-garden.ts';
export * from './plant-range.ts';
export { type Options, recommend } from './recommend.ts';
export * from './recommendation.ts';
export { costOf, refineByForecast } from './refine.ts';
export { largestSafeDose, normalChance, overshootRisk, type Risk } from './risk.ts';
export { shoppingFor } from './shopping.ts';
export { type Requirement, requirementOf } from './size.ts';
export * from './split.ts';
export * from './suits.ts';
export { targetOf } from './target.ts';
export { type Window, type Work, windowFor } from './when.ts';
