export * from './derivation/index.ts';
