import fc from 'fast-check';

/**
 * Property tests draw the same cases in every run, so that a red run can be had again; `PROPERTY_SEED=random` (or a number)
 * draws others, to look for what nobody has thought of.
 */
const asked = process.env.PROPERTY_SEED;
if (asked !== 'random') fc.configureGlobal({ seed: asked === undefined ? 410 : Number(asked) });
