/** Heat against a cooler's rating, and air, for the rules on them. */
import type { Chassis } from '../../parts/classes/chassis.ts';

/** By common practice: at half as much again as its rating a processor no longer slows down enough to be kept. */
const farFactor = 1.5;

/** Whether a cooler is so weak that the machine stops under load, and not only slows down. */
export const isFarOver = (makes: number, carries: number): boolean => makes > carries * farFactor;

/** Supplies of the older shapes draw the air of the whole case out through themselves. Common practice. */
export const drawsAir = (shape: Chassis['supplyShape']): boolean => shape === 'baby-at' || shape === 'full-at';
