/** A small shelf and an exercise on it, for worked answers. Prices are in cents; the plain list costs 61,000. */
import type { ChooseExercise, MisfitsExercise } from '../../src/exercises/types.ts';
import { aPart } from '../../src/fit/examples.ts';
import type { Part } from '../../src/parts/part.ts';

const { heightMm: _, ...heightless } = aPart('cooler');
const { capacityGb: __, ...sizeless } = aPart('memory-module');
const { priceCents: ___, ...priceless } = aPart('power-supply');

export const parts: Part[] = [
  { ...aPart('chassis'), id: 'lodden-hull', name: 'Lodden Hull', coolerHeightMm: 158, priceCents: 8000 },
  { ...aPart('motherboard'), id: 'orrisk-quay', name: 'Orrisk Quay', priceCents: 12_000 },
  { ...aPart('processor'), id: 'quellin-buoy', name: 'Quellin Buoy', processingPoints: 400, priceCents: 15_000 },
  { ...aPart('processor'), id: 'quellin-float', name: 'Quellin Float', processingPoints: 399, priceCents: 15_000 },
  { ...aPart('cooler'), id: 'skarn-low', name: 'Skarn Low', heightMm: 150, priceCents: 3000 },
  { ...aPart('cooler'), id: 'skarn-mast', name: 'Skarn Mast', heightMm: 165, priceCents: 3000 },
  { ...heightless, id: 'skarn-fog', name: 'Skarn Fog', priceCents: 3000 },
  { ...aPart('memory-module'), id: 'tammer-16', name: 'Tammer 16', capacityGb: 16, priceCents: 5000 },
  { ...sizeless, id: 'tammer-fog', name: 'Tammer Fog', priceCents: 5000 },
  { ...aPart('storage-drive'), id: 'marl-shell', name: 'Marl Shell', priceCents: 6000 },
  { ...aPart('power-supply'), id: 'dray-tide', name: 'Dray Tide', priceCents: 7000 },
  { ...priceless, id: 'dray-gift', name: 'Dray Gift' },
  { ...aPart('processor'), id: 'velm-back-room', name: 'Velm Back Room', processingPoints: 900, priceCents: 1 },
];

export const choose: ChooseExercise = {
  kind: 'choose',
  id: 'harbour-office',
  title: 'The harbour office',
  lesson: 'fit/choosing',
  minutes: 20,
  procedure: 'bench-build',
  rubric: [
    { id: 'complete', says: 'Nothing is missing', marks: 2, for: 'complete' },
    { id: 'fits', says: 'It goes together', marks: 3, for: 'fits' },
    { id: 'safe', says: 'It harms nobody', marks: 2, for: 'safe' },
    { id: 'known', says: 'Every size is known', marks: 2, for: 'known' },
    { id: 'budget', says: 'The money is kept to', marks: 2, for: 'budget' },
    { id: 'memory', says: 'Memory for the charts', marks: 2, for: { demand: 'memory' } },
    { id: 'points', says: 'Work for a day', marks: 1, for: { demand: 'points' } },
  ],
  brief: {
    for: 'the harbour office',
    says: 'They draw charts. They want to do so all day.',
    budgetCents: 65_000,
    demands: [
      {
        id: 'memory',
        says: 'All charts are open at once.',
        class: 'memory-module',
        field: 'capacityGb',
        over: 'sum',
        atLeast: 32,
        unit: 'GB',
      },
      {
        id: 'points',
        says: 'A chart a minute.',
        class: 'processor',
        field: 'processingPoints',
        over: 'each',
        atLeast: 400,
        unit: 'points',
      },
    ],
  },
  shelf: [
    { position: 'case', class: 'chassis', parts: ['lodden-hull'], from: 1, to: 1 },
    { position: 'board', class: 'motherboard', parts: ['orrisk-quay'], from: 1, to: 1 },
    { position: 'processor', class: 'processor', parts: ['quellin-buoy', 'quellin-float'], from: 1, to: 1 },
    { position: 'cooler', class: 'cooler', parts: ['skarn-low', 'skarn-mast', 'skarn-fog'], from: 0, to: 1 },
    { position: 'memory', class: 'memory-module', parts: ['tammer-16', 'tammer-fog'], from: 1, to: 4 },
    { position: 'system-drive', class: 'storage-drive', parts: ['marl-shell'], from: 1, to: 1 },
    { position: 'supply', class: 'power-supply', parts: ['dray-tide', 'dray-gift'], from: 1, to: 1 },
  ],
  answer: [
    { part: 'lodden-hull', quantity: 1 },
    { part: 'orrisk-quay', quantity: 1 },
    { part: 'quellin-buoy', quantity: 1 },
    { part: 'skarn-low', quantity: 1 },
    { part: 'tammer-16', quantity: 2 },
    { part: 'marl-shell', quantity: 1 },
    { part: 'dray-tide', quantity: 1 },
  ],
};

/** A cooler 7 mm too tall for the case, memory of the right kind, and a cooler that fits the socket. */
export const misfits: MisfitsExercise = {
  kind: 'misfits',
  id: 'left-on-the-table',
  title: 'Left on the table',
  lesson: 'fit/room',
  minutes: 10,
  says: 'What is amiss?',
  rubric: [
    { id: 'room', says: 'The room', marks: 3, for: { statement: 'room' } },
    { id: 'memory', says: 'The memory', marks: 2, for: { statement: 'memory' } },
    { id: 'all', says: 'All judged', marks: 1, for: 'complete' },
  ],
  list: [
    { part: 'lodden-hull', quantity: 1 },
    { part: 'orrisk-quay', quantity: 1 },
    { part: 'quellin-buoy', quantity: 1 },
    { part: 'skarn-mast', quantity: 1 },
    { part: 'tammer-16', quantity: 2 },
    { part: 'marl-shell', quantity: 1 },
    { part: 'dray-tide', quantity: 1 },
  ],
  statements: [
    { id: 'room', says: 'The panel closes over the cooler.', rule: 'clearance/cooler-height', of: 'cooler' },
    { id: 'memory', says: 'The memory is of the right kind.', rule: 'memory/generation', of: 'memory-module' },
  ],
};
