/** Heat: what the processor makes under steady load, against what its cooler carries away. */
import type { Unit } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import type { Budget } from '../report.ts';
import { allOf, inAll, type Share } from './share.ts';

const sharesOf = ({ part }: Unit): Share[] => {
  if (part.class !== 'processor') return [];
  return [{ amount: part.sustainedW === undefined ? undefined : deciwatts(part.sustainedW), field: 'sustainedW' }];
};

/** In deciwatts. With several coolers there is no one limit, so none is given. */
export function heatBudget(units: readonly Unit[]): Budget {
  const coolers = allOf(units, 'cooler');
  const rated = coolers.length === 1 ? coolers[0]?.part.ratedW : undefined;
  return {
    name: 'heat',
    unit: 'deciwatt',
    ...inAll(units, sharesOf),
    ...(rated === undefined ? {} : { limit: deciwatts(rated) }),
    formula: "The processor's power under steady load, all of which becomes heat.",
    source: 'maker-data-sheet',
  };
}
