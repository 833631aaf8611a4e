/** Heat: what the processor makes under steady load, against what its cooler carries away. */
import type { Unit } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import type { Budget } from '../report.ts';
import { allOf, inAll, leastOf, type Share } from './share.ts';

const sharesOf = ({ part }: Unit): Share[] => {
  if (part.class !== 'processor') return [];
  return [{ amount: part.sustainedW === undefined ? undefined : deciwatts(part.sustainedW), field: 'sustainedW' }];
};

/** In deciwatts. */
export function heatBudget(units: readonly Unit[]): Budget {
  return {
    name: 'heat',
    unit: 'deciwatt',
    ...inAll(units, sharesOf),
    ...leastOf(allOf(units, 'cooler').map(({ part }) => part.ratedW)),
    about: allOf(units, 'cooler').map(({ id }) => id),
    formula: "The processor's power under steady load, all of which becomes heat.",
    source: 'maker-data-sheet',
  };
}
