import { plugRatings } from '../../standards/plugs.ts';
import { ofClass, type SenseCheck, type SenseFault } from './check.ts';

/** Meant to be used together; the 16-pin plug stands in for several of these, and drives hardly ever draw at once. */
const cardPlugs = ['pcie-6', 'pcie-8'] as const;
const isForCards = (plug: string): plug is (typeof cardPlugs)[number] => cardPlugs.some((one) => one === plug);

/** No lead promises more than the whole supply gives, nor do all its 6-pin and 8-pin leads for cards together. */
export const supplyLeads: SenseCheck = {
  id: 'supply-leads',
  check: (parts) =>
    ofClass(parts, 'power-supply').flatMap(({ id, leads = [], ratedW }) => {
      const faults: SenseFault[] = [];
      const tooMuch = (path: SenseFault['path'], watts: number, most: number, expected: string) => {
        if (watts > most) faults.push({ part: id, path, actual: `${watts} W`, expected });
      };
      for (const [n, { carriesW, senseW, plugs }] of leads.entries()) {
        if (ratedW !== undefined) {
          const expected = `${ratedW} W or less, which is all the supply gives`;
          if (carriesW !== undefined) tooMuch(['leads', n, 'carriesW'], carriesW, ratedW, expected);
          if (senseW !== undefined) tooMuch(['leads', n, 'senseW'], senseW, ratedW, expected);
        }
        if (senseW !== undefined && !plugs.includes('12v-2x6')) {
          const expected = 'a 12v-2x6 plug on the lead, which alone has sense pins';
          faults.push({ part: id, path: ['leads', n, 'senseW'], actual: `${senseW} W`, expected });
        }
      }
      const cards = leads.flatMap(({ plugs, carriesW }) => {
        const card = plugs.filter(isForCards);
        const sum = card.reduce((watts, plug) => watts + plugRatings[plug].watts, 0);
        return card.length === 0 ? [] : [Math.min(sum, carriesW ?? sum)];
      });
      const promised = cards.reduce((sum, watts) => sum + watts, 0);
      if (ratedW !== undefined && promised > ratedW) {
        const expected = `${ratedW} W or less, which is all the supply gives`;
        faults.push({
          part: id,
          path: ['leads'],
          actual: `6-pin and 8-pin leads for cards of ${promised} W together`,
          expected,
        });
      }
      return faults;
    }),
};
