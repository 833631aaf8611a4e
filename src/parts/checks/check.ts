/** What a check of a catalogue's sense is: each file alone may be of the right shape, and still not make sense. */
import type { Part, PartClass, PartId, PartOf } from '../part.ts';

export type SenseFault = {
  part: PartId;
  /** The field that makes no sense: `['leads', 0, 'carriesW']`. */
  path: readonly (string | number)[];
  actual: string;
  expected: string;
};

/** `id` is the second half of a fault's id, `part/<id>`. Parts come in any order; the faults do too. */
export type SenseCheck = { id: string; check(parts: readonly Part[]): SenseFault[] };

export const ofClass = <C extends PartClass>(parts: readonly Part[], partClass: C): PartOf<C>[] =>
  parts.filter((part): part is Part & PartOf<C> => part.class === partClass);
