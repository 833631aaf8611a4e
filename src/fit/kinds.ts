/** The kinds of joint that the core's own rules make. */
import { kindsOf } from './judging/kinds-of.ts';
import type { Kinds } from './model.ts';
import { rules } from './rules/index.ts';

export const kinds: Kinds = kindsOf(rules);
