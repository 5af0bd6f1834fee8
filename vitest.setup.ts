import fc from 'fast-check';

/**
 * Property tests draw the same cases on every run, so that a red run means a change and not a throw of the dice.
 * `SORREL_SEED=random` (or a number) draws others: run it now and then, and turn what it finds into a test.
 */
const asked = process.env.SORREL_SEED;
if (asked !== 'random')
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: asked === undefined ? 20261125 : Number(asked) });
