import { ofClass, type SenseCheck } from './check.ts';

const volts = { '3.3v': 3.3, '5v': 5, '12v': 12, '-12v': 12, '-5v': 5, '5vsb': 5 } as const;

/** No rail gives more than the whole supply. */
export const supplyRails: SenseCheck = {
  id: 'supply-rails',
  check: (parts) =>
    ofClass(parts, 'power-supply').flatMap(({ id, rails = [], ratedW }) =>
      rails.flatMap(({ id: rail, milliamps }, n) => {
        const watts = (milliamps * volts[rail]) / 1000;
        if (ratedW === undefined || watts <= ratedW) return [];
        const expected = `${ratedW} W or less, which is all the supply gives`;
        return [{ part: id, path: ['rails', n, 'milliamps'], actual: `${watts} W at ${rail}`, expected }];
      }),
    ),
};
