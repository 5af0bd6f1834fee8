export { keepApart } from './apart.ts';
export { type ArrangeOptions, arrange } from './arrange.ts';
export * from './arrangement.ts';
export { type Board, boardOf, type Item, type Spot } from './board.ts';
export { figuresOf } from './figures.ts';
export { greedy } from './greedy.ts';
export { type HighsLike, highsSolver } from './highs.ts';
export * from './input.ts';
export { type BuildOptions, type Built, buildModel } from './model.ts';
export { type Move, type Moves, movesOf } from './moves.ts';
export {
  apartSaid,
  PLACE_VERDICTS,
  type PlaceVerdict,
  type PlantInPlace,
  plantInPlace,
  plantsApart,
  rangeFor,
} from './plant-in-place.ts';
export { type Choice, readBack } from './read-back.ts';
export { familyOf, rotationFor, stays } from './rotation.ts';
export type { LinearModel, Solved, Solver } from './solver.ts';
export { type SplitBed, type SplitGroup, splitBed } from './split-bed.ts';
