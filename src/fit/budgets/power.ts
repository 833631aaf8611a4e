/** Power: what the parts may draw at the same moment, against what the supply is rated for. */
import type { Unit } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import type { Budget } from '../report.ts';
import { allOf, inAll, leastOf, type Share } from './share.ts';

/** Deciwatts, by common practice: what a maker does not give, and what is much the same for all. */
export const allowances = { motherboard: 400, 'memory-module': 50 } as const;

const fanVolts = 12;
/** Milliamps at 12 V as deciwatts, rounded up. */
const fanDeciwatts = (milliamps: number): number => Math.ceil((milliamps * fanVolts) / 100);

const allowed = (amount: number): Share[] => [{ amount, field: 'allowance' }];
const unknown = (field: string): Share[] => [{ amount: undefined, field }];
const drawn = (watts: number | undefined, field: string): Share[] => [
  { amount: watts === undefined ? undefined : deciwatts(watts), field },
];
/** A burst where it is recorded, otherwise the steady load. */
const peak = ({ peakW, sustainedW }: { peakW?: number | undefined; sustainedW?: number | undefined }): Share[] =>
  peakW === undefined ? drawn(sustainedW, 'sustainedW') : drawn(peakW, 'peakW');

function sharesOf({ part }: Unit): Share[] {
  switch (part.class) {
    case 'processor':
    case 'graphics-card':
      return peak(part);
    case 'motherboard':
    case 'memory-module':
      return allowed(allowances[part.class]);
    case 'storage-drive':
      return part.milliwatts === undefined
        ? unknown('milliwatts')
        : [{ amount: Math.ceil(part.milliwatts / 100), field: 'milliwatts' }];
    case 'fan':
      return part.milliamps === undefined
        ? unknown('milliamps')
        : [{ amount: fanDeciwatts(part.milliamps), field: 'milliamps' }];
    case 'cooler':
      return part.fan ? [{ amount: fanDeciwatts(part.fan.milliamps), field: 'fan.milliamps' }] : [];
    case 'chassis':
      return part.fittedFans
        ? part.fittedFans.map(({ milliamps }) => ({ amount: fanDeciwatts(milliamps), field: 'fittedFans.milliamps' }))
        : unknown('fittedFans');
    default:
      return [];
  }
}

/** In deciwatts. */
export function powerBudget(units: readonly Unit[]): Budget {
  return {
    name: 'power',
    unit: 'deciwatt',
    ...inAll(units, sharesOf),
    ...leastOf(allOf(units, 'power-supply').map(({ part }) => part.ratedW)),
    about: allOf(units, 'power-supply').map(({ id }) => id),
    formula:
      'The highest power recorded for the processor and the graphics card, the most that drives and fans draw, and an allowance for the board and for each memory module, added up.',
    source: 'practice-power-allowance',
  };
}
