/** Weight, against what one person should lift. In grams. */
import type { PartClass } from '../../parts/part.ts';
import { liftingConstant } from '../../standards/lifting.ts';
import type { Unit } from '../model.ts';
import { isOf } from '../needs/index.ts';
import type { Budget } from '../report.ts';
import { type Total, term } from './total.ts';

/** What is inside the case when it is carried. */
const inside: readonly PartClass[] = [
  'chassis',
  'motherboard',
  'processor',
  'cooler',
  'memory-module',
  'graphics-card',
  'storage-drive',
  'power-supply',
  'fan',
  'bank-module',
  'coprocessor',
  'processor-board',
  'bus-card',
  'expansion-card',
  'floppy-drive',
  'fixed-disk',
  'adapter',
];

const onePersonGrams = liftingConstant.kg * 1000;
const liftedBy = `Against ${liftingConstant.kg} kg, the most for one person in the best position: close to the body, at hip height, a short lift, seldom. With the arms stretched out or from the floor it is much less.`;

/** The machine as it is carried, without its monitor. */
export const weight: Total = {
  name: 'weight',
  of: 'machine',
  unit: 'gram',
  adds: inside.map((partClass) => term(partClass, ['grams'], ({ grams }) => [{ amount: grams, field: 'grams' }])),
  bound: { most: onePersonGrams },
  when: 'added',
  formula: `The weights of the case and of everything in it, added up. ${liftedBy}`,
  source: liftingConstant.source,
};

/** Each monitor, which is carried by itself. */
export const monitorWeights = (units: readonly Unit[]): Budget[] =>
  units.filter(isOf('monitor')).map(({ id, part: { grams } }) => ({
    name: 'weight',
    of: id,
    unit: 'gram',
    used: grams ?? 0,
    limit: onePersonGrams,
    about: [id],
    unknown: grams === undefined ? [id] : [],
    working: grams === undefined ? [] : [{ unit: id, amount: grams, field: 'grams' }],
    formula: `The weight of the monitor. ${liftedBy}`,
    source: liftingConstant.source,
  }));
