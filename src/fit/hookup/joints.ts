/** What holds of joints that are made: `placed` of the needs says which they are. */
import { charged, chargeJoints, clearCharges, newMark } from './charge.ts';
import type { Seeker, Way } from './records.ts';

/** Whether a place does not exist because a need that it waits for is left over. */
export function isAbsent({ above }: Way): boolean {
  for (const one of above) if (!one || (one.placed === null && !one.need.stands)) return true;
  return false;
}

/** Whether one of these needs hangs on itself. */
export function hasLoop(seekers: readonly Seeker[]): boolean {
  const onTheWay = newMark();
  const isClear = newMark();
  const loops = (seeker: Seeker): boolean => {
    if (seeker.mark === isClear) return false;
    if (seeker.mark === onTheWay) return true;
    seeker.mark = onTheWay;
    if (seeker.placed) for (const above of seeker.placed.way.above) if (above && loops(above)) return true;
    seeker.mark = isClear;
    return false;
  };
  for (const seeker of seekers) if (loops(seeker)) return true;
  return false;
}

/** The loss that these needs make on resources that bind; Infinity when a refused one is overdrawn. */
export function lossOf(seekers: readonly Seeker[]): number {
  chargeJoints(seekers);
  let loss = 0;
  for (const { binds, used, capacity, lost } of charged) {
    if (binds && used > capacity) loss += lost ? used - capacity : Infinity;
  }
  clearCharges();
  return loss;
}
