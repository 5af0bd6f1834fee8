export * from './core-spread.ts';
export * from './cores.ts';
export * from './meter-shown.ts';
export * from './share-sample.ts';
export * from './slurry.ts';
export * from './when-to-sample.ts';
