export * from './bed-record.ts';
export * from './capacity-grid.ts';
export * from './check.ts';
export * from './learn.ts';
export * from './reading.ts';
export * from './resistance.ts';
export * from './trend.ts';
export * from './types.ts';
