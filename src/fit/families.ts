/**
 * Families of joints. Kinds of joint that can shut each other out belong to one family, so whether everything can be
 * joined may be asked family by family: a list has a hookup with nothing left over that matters exactly when each of its
 * families has.
 */
import { type Part, type PartClass, partClasses } from '../parts/part.ts';
import { hookUpBy, type JointKinds } from './judging/hook-up-by.ts';
import { kindNames } from './judging/plan.ts';
import type { Hookup, KindName, Lowered } from './model.ts';
import { lower, readBeside, unitsOf } from './needs/index.ts';
import type { Overall } from './report.ts';
import type { JudgeInput } from './rule.ts';
import { rules } from './rules/index.ts';

export type Family = JointKinds & {
  /** The first of its kinds. */
  readonly id: KindName;
  /** Classes whose parts have a say in it; parts of other classes change nothing. */
  readonly classes: readonly PartClass[];
};

/**
 * The families of a shelf, each kind that its parts know in one of them. Two kinds are in one family when places of both
 * share a resource, or when places of one wait for needs of the other. They hold for every list of parts of the shelf.
 */
export function familiesOf(parts: readonly Part[]): Family[] {
  const groups = new Groups();
  const classes = new Map<KindName, Set<PartClass>>();
  for (const part of parts) {
    for (const unit of unitsOf([{ part, quantity: 1 }])) {
      const lowered = lower(unit);
      bind(groups, lowered);
      for (const kind of kindsIn(lowered)) {
        classes.set(kind, new Set([...(classes.get(kind) ?? []), part.class, ...(readBeside[kind] ?? [])]));
      }
    }
  }
  const families = new Map<string, KindName[]>();
  for (const kind of kindNames) {
    if (!classes.has(kind)) continue;
    const top = groups.top(kind);
    families.set(top, [...(families.get(top) ?? []), kind]);
  }
  return [...families.values()].map((kinds) => {
    const seen = kinds.flatMap((kind) => [...(classes.get(kind) ?? [])]);
    return { id: kinds[0] as KindName, kinds, classes: partClasses.filter((one) => seen.includes(one)) };
  });
}

/**
 * The best hookup of one family of a list. It fits when every need that matters (left over: a hazard or a blocker) is
 * joined and no rule of that severity about these joints says otherwise; what is not recorded, or was not judged, is
 * "cannot tell". It says what `judge` says of the same kinds.
 */
export const hookUp: (family: JointKinds, input: JudgeInput) => { verdict: Overall; hookup: Hookup } = hookUpBy(rules);

const kindsIn = ({ needs, places, unrecorded }: Lowered): Set<KindName> =>
  new Set([...needs, ...places, ...unrecorded].map(({ kind }) => kind));

/** Kinds stand for themselves; a resource, or a group that shares evenly, stands among the kinds that draw on it. */
function bind(groups: Groups, { needs, places, resources }: Lowered): void {
  const kindOf = new Map(needs.map(({ id, kind }) => [id, kind]));
  for (const { kind, meters = {}, after = [] } of places) {
    for (const resource of Object.values(meters).flat()) groups.join(kind, `resource ${resource}`);
    for (const need of after) groups.join(kind, kindOf.get(need) ?? kind);
  }
  for (const { id, even } of resources) if (even !== undefined) groups.join(`resource ${id}`, `even ${even}`);
}

/** Names that are joined stand under one of them. */
class Groups {
  readonly #up = new Map<string, string>();

  top(name: string): string {
    let top = name;
    for (let up = this.#up.get(top); up !== undefined; up = this.#up.get(top)) top = up;
    return top;
  }

  join(a: string, b: string): void {
    const [from, to] = [this.top(a), this.top(b)];
    if (from !== to) this.#up.set(from, to);
  }
}
