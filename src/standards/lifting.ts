/** How much one person should lift, by the lifting equation. Guidance, not a promise of safety. */

/** The most in the best position: close to the body, at hip height, a short lift, seldom. */
export const liftingConstant = { kg: 23, source: 'niosh-lifting' } as const;

/**
 * Kilograms for one person, lifting in front and seldom, by where the hands are: how far in front of the ankles, how
 * high above the floor at the start, and how far the load travels up or down, in centimetres. Each is taken no better
 * than its best (25, 75 and 25 cm). Undefined beyond reach (63 cm) or above 175 cm, where nobody should lift.
 */
export function recommendedKg(reachCm: number, heightCm: number, travelCm: number): number | undefined {
  if (reachCm > 63 || heightCm > 175) return undefined;
  const reach = 25 / Math.max(25, reachCm);
  const height = 1 - 0.003 * Math.abs(heightCm - 75);
  const travel = 0.82 + 4.5 / Math.max(25, travelCm);
  return liftingConstant.kg * reach * height * travel;
}
