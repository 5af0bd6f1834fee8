export * from './derivation.ts';
export * from './message.ts';
export * from './problem.ts';
