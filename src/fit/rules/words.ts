/** Small helps for the words of rules. */
import type { PartClass } from '../../parts/part.ts';
import { either } from '../../wording/phrases.ts';
import { termName } from '../../wording/terms.ts';
import type { Fact } from '../report.ts';

/** True when one of the fields that are not recorded belongs to a part of this class. */
export const lacks = (missing: readonly string[], partClass: PartClass): boolean =>
  missing.some((field) => field.startsWith(partClass));

const terms = (value: Fact): string[] => (Array.isArray(value) ? value : [value]).map((term) => termName(String(term)));

/** A value or a list of values as read: "k4", "ATX or microATX". */
export const oneOf = (value: Fact): string => either([...new Set(terms(value))]);
