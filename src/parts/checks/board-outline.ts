import { formFactors } from '../../standards/boards.ts';
import { ofClass, type SenseCheck } from './check.ts';

/** Tables round the inches of the specifications to whole millimetres. */
const roundingMm = 1;

/** A board is no larger than its form factor. */
export const boardOutline: SenseCheck = {
  id: 'board-outline',
  check: (parts) =>
    ofClass(parts, 'motherboard').flatMap(({ id, formFactor, depthMm, heightMm }) => {
      if (formFactor === undefined) return [];
      const { name, depthMm: depth, widthMm } = formFactors[formFactor];
      const over = (field: string, value: number | undefined, most: number) =>
        value === undefined || value <= most + roundingMm
          ? []
          : [{ part: id, path: [field], actual: `${value} mm`, expected: `${most} mm or less, as ${name} boards are` }];
      return [...over('depthMm', depthMm, depth), ...over('heightMm', heightMm, widthMm)];
    }),
};
