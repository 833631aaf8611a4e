/** Heat: what the processor makes under steady load, against what its cooler carries away. In deciwatts. */
import { deciwatts } from '../needs/amounts.ts';
import { boundBy, type Total, term } from './total.ts';

export const heat: Total = {
  name: 'heat',
  unit: 'deciwatt',
  adds: [
    term('processor', ['sustainedW'], ({ sustainedW }) => [
      { amount: sustainedW === undefined ? undefined : deciwatts(sustainedW), field: 'sustainedW' },
    ]),
  ],
  bound: boundBy('cooler', ['ratedW'], ({ ratedW }) => (ratedW === undefined ? undefined : deciwatts(ratedW))),
  when: 'always',
  formula: "The processor's power under steady load, all of which becomes heat.",
  source: 'maker-data-sheet',
};
