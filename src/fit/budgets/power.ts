/** Power that the supply gives: at its likely peak, under steady load, idle and in a short excursion. In deciwatts. */
import { excursionColumn, excursionSource, excursions } from '../../standards/excursions.ts';
import { deciwatts } from '../needs/amounts.ts';
import { loads } from './loads.ts';
import { isOlder } from './rails.ts';
import { boundBy, type Total } from './total.ts';

const rating = boundBy('power-supply', ['ratedW'], ({ ratedW }) =>
  ratedW === undefined ? undefined : deciwatts(ratedW),
);

export const power: Total = {
  name: 'power',
  unit: 'deciwatt',
  adds: loads('peak'),
  bound: rating,
  when: 'always',
  formula:
    'The highest power recorded for the processor and the cards, the most that drives and fans draw, and an allowance for the board and for each memory module, added up.',
  source: 'practice-power-allowance',
};

export const sustainedPower: Total = {
  name: 'sustained-power',
  unit: 'deciwatt',
  adds: loads('sustained'),
  bound: rating,
  when: 'added',
  formula:
    'The power recorded under steady load for the processor and the cards, the most that drives and fans draw, and an allowance for the board and for each memory module, added up.',
  source: 'practice-power-allowance',
};

export const idlePower: Total = {
  name: 'idle-power',
  unit: 'deciwatt',
  adds: loads('idle'),
  bound: rating,
  when: 'added',
  formula:
    'The power recorded for each part while the machine waits, and an allowance for the board and for each memory module where nothing is recorded, added up. Fans count at full speed.',
  source: 'practice-power-allowance',
};

/** How long the excursion is that a card's file records. */
const [shortest] = excursions;

/** A supply that promises nothing beyond its rating bears its rating; nobody promised more for one of the older shapes. */
export const excursion: Total = {
  name: 'excursion',
  unit: 'deciwatt',
  adds: loads('excursion'),
  bound: boundBy('power-supply', ['ratedW', 'bearsExcursions', 'leads', 'shape'], (part) => {
    const { ratedW, leads, bearsExcursions = isOlder(part) ? false : undefined } = part;
    if (ratedW === undefined || bearsExcursions === undefined) return undefined;
    if (!bearsExcursions) return deciwatts(ratedW);
    if (leads === undefined) return undefined;
    const column = excursionColumn(
      ratedW,
      leads.some(({ plugs }) => plugs.includes('12v-2x6')),
    );
    return Math.floor((deciwatts(ratedW) * shortest.percent[column]) / 100);
  }),
  when: 'added',
  formula: `What the graphics card draws in an excursion of ${shortest.microseconds} microseconds, and what everything else draws at its peak, added up. A supply of the third ATX generation bears twice its rating that long when it is rated above 450 W and has the 16-pin plug, half as much again otherwise.`,
  source: excursionSource,
};
