/** Heat against a cooler's rating, for the rules on it. */

/** By common practice: at half as much again as its rating a processor no longer slows down enough to be kept. */
const farFactor = 1.5;

/** Whether a cooler is so weak that the machine stops under load, and not only slows down. */
export const isFarOver = (makes: number, carries: number): boolean => makes > carries * farFactor;
