/** Outside measures, in millimetres: for drawings, and for the height of drives whose size alone is recorded. */
import { formFactors, holePositions } from './boards.ts';

/** A slot for a card is this wide. Source: `pci-express-base`. */
export const slotWidth = 8.8;

/** Drives that go into a bay, their largest envelope. Source: `sff-8301` for 3.5, `drive-bays` for 5.25, `from-memory` for 2.5. */
export const driveBoxes = {
  '3.5': { length: 147, height: 26.1 },
  '2.5': { length: 100.45, height: 9.5 },
  '5.25': { length: 203.2, height: 41.3 },
  '5.25-full': { length: 203.2, height: 82.6 },
} as const;

const holesOf = (form: keyof typeof formFactors): readonly (readonly [down: number, front: number])[] =>
  formFactors[form].holes.map((letter) => holePositions[letter]);

/** Holes of each form of board. */
export const boardHoles = {
  atx: holesOf('atx'),
  'micro-atx': holesOf('micro-atx'),
  'mini-itx': holesOf('mini-itx'),
  'e-atx': holesOf('e-atx'),
  'full-at': holesOf('full-at'),
  'baby-at': holesOf('baby-at'),
  lpx: holesOf('lpx'),
} as const;
