/** Findings in words. Words are made nowhere else. */
import type { Finding, Unjudged } from './report.ts';
import type { Rule } from './rule.ts';
import { rules } from './rules/index.ts';

/** When it fits there is `what` only. `remedy` of "cannot tell" is how to find out, and `why` is empty there. */
export type FindingWords = { headline: string; what: string; why: string; remedy: string };

/** For needs that were left over where the search stopped: nothing is missing but an answer. */
const notTried = {
  headline: 'Not every way was tried',
  what: 'The search stopped before every way was tried, so it is not judged whether all these parts find their places.',
  findOut:
    'Take some of the parts that can be joined in many ways off the list, such as fans or adapters, and look again.',
};

/** Says findings by a list of rules. Throws a RangeError on a finding of a rule that is not in the list. */
export function sayBy(list: readonly Rule[]): (finding: Finding) => FindingWords {
  const byId = new Map(list.map((rule) => [rule.id, rule]));
  return ({ rule: id, verdict, facts, missing = [] }) => {
    const rule = byId.get(id);
    if (!rule) throw new RangeError(`No rule is called ${id}`);
    // The facts of a finding come from the judgement of the rule that words it.
    const say = rule.say as Extract<Rule, { gathers: unknown }>['say'];
    if (verdict === 'fits') return { headline: '', what: say.fits(facts), why: '', remedy: '' };
    if (verdict === 'does-not-fit') return say.doesNotFit(facts);
    const { headline, what, findOut } = 'left' in rule && missing.length === 0 ? notTried : say.cannotTell(missing);
    return { headline, what, why: '', remedy: findOut };
  };
}

export const sayFinding = sayBy(rules);

/** Why a line of the list was not judged, as a sentence. */
export function sayUnjudged({ part, why }: Unjudged): string {
  switch (why) {
    case 'unknown-part':
      return `“${part}” is not a part of this course.`;
    case 'unknown-class':
    case 'not-whole':
      return `“${part}” is from another edition of this course, and is not judged.`;
    case 'miscounted':
      return `No machine holds so many of “${part}”.`;
    case 'too-many':
      return `With “${part}” the list has more parts than any machine, so it is not judged.`;
  }
}
