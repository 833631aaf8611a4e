/** Lights and the pins on a board they are plugged onto. */
import type { Need, UnitId } from '../model.ts';

export const lightLead = (
  id: string,
  part: UnitId,
  { plug, milliamps }: { plug: string; milliamps: number },
): Need => ({
  id,
  part,
  kind: 'light-header',
  left: 'note',
  attrs: { plug },
  draws: { milliamps },
});
