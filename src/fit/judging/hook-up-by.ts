/** The hookup of one family of joints, and whether it holds. */
import { kept } from '../../units/kept.ts';
import { findHookup } from '../hookup/search.ts';
import type { Hookup, KindName, Lowered } from '../model.ts';
import { lowerEach, putTogether } from '../needs/index.ts';
import { sortOut } from '../needs/units.ts';
import type { Overall } from '../report.ts';
import type { JudgeInput, Rule } from '../rule.ts';
import { openHookupRules } from './hookup-rules.ts';
import { grade, isGrave, overallOf, whyOf } from './judge-by.ts';
import { openJointRules } from './parts-rules.ts';
import { planOf, type Told } from './plan.ts';
import { openDesk } from './table.ts';

/** Kinds of joint that can be judged apart from all others; see `familiesOf`. */
export type JointKinds = { readonly kinds: readonly KindName[] };

/** Hooks up by a list of rules; `hookUp` in `families.ts` says what it gives. */
export function hookUpBy(
  list: readonly Rule[],
): (family: JointKinds, input: JudgeInput) => { verdict: Overall; hookup: Hookup } {
  const plan = planOf(list);
  const desk = openDesk(plan);
  const wordHookup = openHookupRules(plan);
  const judgeAtJoints = openJointRules(plan);
  return ({ kinds }, input) => {
    const { groups, unjudged } = sortOut(input);
    const each = lowerEach(groups.flatMap(({ units }) => units)).map(only(kinds));
    const problem = { ...putTogether(each), kinds: plan.kinds };
    const hookup = findHookup(problem);
    const table = desk.lay(groups, each, hookup, whyOf(problem, hookup));
    const told: Told = new Array(plan.count);
    wordHookup(table, told);
    judgeAtJoints(table, told);
    const graded = grade(told);
    const isPartly = unjudged.length > 0 || hookup.left.some(isGrave);
    // Where nothing is needed there is nothing that does not fit.
    const isBare = problem.needs.length === 0 && problem.unrecorded.length === 0;
    return { verdict: isBare && !isPartly ? 'fits' : overallOf(graded, isPartly), hookup };
  };
}

/** What a part has of these kinds. */
const only = kept((kinds: readonly KindName[]) => {
  const isOne = ({ kind }: { kind: KindName }): boolean => kinds.includes(kind);
  return kept(
    (lowered: Lowered): Lowered => ({
      needs: lowered.needs.filter(isOne),
      places: lowered.places.filter(isOne),
      resources: lowered.resources,
      unrecorded: lowered.unrecorded.filter(isOne),
    }),
  );
});
