/** Air, for the rules on cooling. */
import type { Chassis } from '../../parts/classes/chassis.ts';

/** Supplies of the older shapes draw the air of the whole case out through themselves. Common practice. */
export const drawsAir = (shape: Chassis['supplyShape']): boolean => shape === 'baby-at' || shape === 'full-at';
