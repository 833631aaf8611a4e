/** What every form of rule has in common: how a judgement becomes a finding. */
import { partClasses } from '../../parts/part.ts';
import type { Unit, UnitId } from '../model.ts';
import type { Facts, Finding } from '../report.ts';
import type { Judgement, Rule } from '../rule.ts';

type Told = Omit<Finding, 'id' | 'rule' | 'basis' | 'severity'> & { severity?: Finding['severity'] };

/** `<rule> <joint, need or units>`. */
export function finding(rule: Rule, told: Told): Finding {
  const { verdict, severity = rule.severity, about, joint, need, facts, missing } = told;
  return {
    id: `${rule.id} ${joint ?? need ?? (about.length > 0 ? about.join('+') : 'list')}`,
    rule: rule.id,
    verdict,
    severity,
    basis: rule.basis,
    about,
    ...(joint === undefined ? {} : { joint }),
    ...(need === undefined ? {} : { need }),
    facts,
    ...(missing === undefined ? {} : { missing }),
  };
}

/** A finding, or none when the rule does not apply. `units` are those that were looked at, `about` those to name. */
export function findingOf(
  rule: Rule,
  judgement: Judgement<Facts>,
  units: readonly Unit[],
  about: readonly UnitId[],
  joint?: string,
): Finding[] {
  if (judgement.verdict === 'does-not-apply') return [];
  const at = joint === undefined ? {} : { joint };
  if (judgement.verdict === 'cannot-tell') {
    const missing = qualify(judgement.missing, units);
    const named = judgement.about ?? (joint === undefined ? unitsNamed(missing, units) : []);
    return [
      finding(rule, {
        verdict: 'cannot-tell',
        about: named.length > 0 ? named : [...about],
        facts: {},
        missing,
        ...at,
      }),
    ];
  }
  const { verdict, facts } = judgement;
  return [finding(rule, { verdict, about: judgement.about ?? [...about], facts, ...at })];
}

const unitsNamed = (missing: readonly string[], units: readonly Unit[]): UnitId[] =>
  units.flatMap(({ id }) => (missing.some((field) => field.startsWith(`${id}.`)) ? [id] : []));

/** `cooler.heightMm` becomes `cooler-1.heightMm`, for each cooler looked at that does not record it. */
export function qualify(missing: readonly string[], units: readonly Unit[]): string[] {
  const all = missing.flatMap((field) => {
    const dot = field.indexOf('.');
    const head = field.slice(0, dot);
    if (!partClasses.some((partClass) => partClass === head)) return [field];
    const ofClass = units.filter(({ part }) => part.class === head);
    const path = field.slice(dot + 1);
    const without = ofClass.filter(({ part }) => valueAt(part, path) === undefined);
    return (without.length > 0 ? without : ofClass).map(({ id }) => `${id}.${path}`);
  });
  return [...new Set(all)];
}

function valueAt(part: object, path: string): unknown {
  let value: unknown = part;
  for (const key of path.split('.')) {
    value = typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined;
  }
  return value;
}
