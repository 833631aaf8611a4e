import { slotPower } from '../../standards/pcie.ts';
import { plugRatings } from '../../standards/plugs.ts';
import { ofClass, type SenseCheck } from './check.ts';

const isRated = (plug: string): plug is keyof typeof plugRatings => Object.hasOwn(plugRatings, plug);

/** A graphics card draws no more under steady load than its slot and its sockets carry together. */
export const cardPower: SenseCheck = {
  id: 'card-power',
  check: (parts) =>
    ofClass(parts, 'graphics-card').flatMap(({ id, sustainedW, powerSockets }) => {
      if (sustainedW === undefined || powerSockets === undefined) return [];
      const plugs = powerSockets.reduce((sum, plug) => sum + (isRated(plug) ? plugRatings[plug].watts : 0), 0);
      const most = slotPower[16].setUpW + plugs;
      if (sustainedW <= most) return [];
      const expected = `${most} W or less, which its slot and its sockets carry`;
      return [{ part: id, path: ['sustainedW'], actual: `${sustainedW} W`, expected }];
    }),
};
