/** A rule may read only what it declares. */
import type { JointEnds, Rule } from '../../src/fit/rule.ts';

/**
 * The same rule; its judgement throws when it reads a field of a part that it did not declare. What it reads is put
 * into `seen`, as `<class>.<field>` and `brief.<answer>`.
 */
export function recordReads(rule: Rule, seen: Set<string> = new Set()): Rule {
  const guard: Guard = (where, value) => watched(rule.id, where, value, seen);
  if ('joins' in rule) {
    return { ...rule, judge: (parts: Record<string, object>) => rule.judge(guardEach(rule.id, parts, guard)) } as Rule;
  }
  if ('gathers' in rule) {
    const many: Guard = (where, items) => (items as object[]).map((item) => guard(where, item)) as typeof items;
    return {
      ...rule,
      judge: (
        parts: Record<string, object>,
        hookup: Parameters<typeof rule.judge>[1],
        brief: Parameters<typeof rule.judge>[2],
      ) => rule.judge(guardEach(rule.id, parts, many), hookup, guard('brief', brief)),
    } as Rule;
  }
  if ('at' in rule) {
    const end = ({ unit, attrs }: JointEnds['need']) => ({
      unit: { ...unit, part: guard(unit.part.class, unit.part) },
      attrs,
    });
    return {
      ...rule,
      judge: (ends: JointEnds) => rule.judge({ ...ends, need: end(ends.need), place: end(ends.place) } as JointEnds),
    } as Rule;
  }
  return rule;
}

type Guard = <T extends object>(where: string, value: T) => T;

/** Classes too are declared: reading one that is not throws. */
function guardEach(id: string, parts: Record<string, object>, guard: Guard) {
  const wrapped = Object.entries(parts).map(([partClass, value]) => [partClass, guard(partClass, value)]);
  return watched(id, 'parts', Object.fromEntries(wrapped), new Set());
}

const watched = <T extends object>(id: string, where: string, value: T, seen: Set<string>): T =>
  new Proxy(value, {
    get(target, key, receiver) {
      if (typeof key === 'string') {
        if (!(key in target)) throw new Error(`${id} reads ${where}.${key} undeclared`);
        seen.add(`${where}.${key}`);
      }
      return Reflect.get(target, key, receiver);
    },
  });
