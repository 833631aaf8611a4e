/** A rule may read only what it declares. */
import type { JointEnds, Rule } from '../../src/fit/rule.ts';

/** The same rule; its judgement throws when it reads a field of a part that it did not declare. */
export function recordReads(rule: Rule): Rule {
  if ('joins' in rule) {
    return { ...rule, judge: (parts: Record<string, object>) => rule.judge(guardEach(rule.id, parts, guard)) } as Rule;
  }
  if ('gathers' in rule) {
    const many = (id: string, where: string, items: object) =>
      (items as object[]).map((item) => guard(id, where, item));
    return {
      ...rule,
      judge: (
        parts: Record<string, object>,
        hookup: Parameters<typeof rule.judge>[1],
        brief: Parameters<typeof rule.judge>[2],
      ) => rule.judge(guardEach(rule.id, parts, many), hookup, guard(rule.id, 'brief', brief)),
    } as Rule;
  }
  if ('at' in rule) {
    const end = (where: string, { unit, attrs }: JointEnds['need']) => ({
      unit: { ...unit, part: guard(rule.id, `${where} (${unit.part.class})`, unit.part) },
      attrs,
    });
    return {
      ...rule,
      judge: (ends: JointEnds) =>
        rule.judge({ ...ends, need: end('need', ends.need), place: end('place', ends.place) } as JointEnds),
    } as Rule;
  }
  return rule;
}

/** Classes too are declared: reading one that is not throws. */
function guardEach(
  id: string,
  parts: Record<string, object>,
  wrap: (id: string, where: string, value: object) => object,
) {
  const wrapped = Object.entries(parts).map(([partClass, value]) => [partClass, wrap(id, partClass, value)]);
  return guard(id, 'parts', Object.fromEntries(wrapped));
}

const guard = <T extends object>(id: string, where: string, value: T): T =>
  new Proxy(value, {
    get(target, key, receiver) {
      if (typeof key === 'string' && !(key in target)) throw new Error(`${id} reads ${where}.${key} undeclared`);
      return Reflect.get(target, key, receiver);
    },
  });
