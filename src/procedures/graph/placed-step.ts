import type { Step } from '../types.ts';

/** A step as it is while its file is compiled: it knows where it stands. */
export type PlacedStep = Step & { at: NonNullable<Step['at']> };
