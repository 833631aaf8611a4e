/** What every form of rule has in common: how a judgement becomes a finding. */
import { partClasses } from '../../parts/part.ts';
import { sortKey } from '../../units/ids.ts';
import type { Unit, UnitId } from '../model.ts';
import type { Facts, Finding } from '../report.ts';
import type { Judgement, Rule } from '../rule.ts';

type Of = Pick<Finding, 'verdict' | 'facts' | 'missing' | 'joint' | 'need'> & {
  severity?: Finding['severity'];
  about: readonly UnitId[];
};

/** `<rule> <joint, need or units>`. */
export function finding(rule: Rule, { verdict, severity, about, joint, need, facts, missing }: Of): Finding {
  const what = joint ?? need ?? (about.length > 0 ? about.join('+') : 'list');
  const made: Finding = {
    id: `${rule.id} ${what}`,
    rule: rule.id,
    verdict,
    severity: severity ?? rule.severity,
    basis: rule.basis,
    about: [...about],
    facts,
  };
  if (joint !== undefined) made.joint = joint;
  if (need !== undefined) made.need = need;
  if (missing !== undefined) made.missing = missing;
  return made;
}

/**
 * A finding; undefined when the rule does not apply. `units` are those that were looked at, `about` those to name.
 */
export function findingOf(
  rule: Rule,
  judgement: Judgement<Facts>,
  units: readonly Unit[],
  about: readonly UnitId[],
  joint?: string,
): Finding | undefined {
  if (judgement.verdict === 'does-not-apply') return undefined;
  const at = joint === undefined ? {} : { joint };
  if (judgement.verdict === 'cannot-tell') {
    const missing = qualify(judgement.missing, units);
    const named = judgement.about ?? (joint === undefined ? unitsNamed(missing, units) : []);
    return finding(rule, {
      verdict: 'cannot-tell',
      about: named.length > 0 ? named : about,
      facts: {},
      missing,
      ...at,
    });
  }
  const { verdict, facts } = judgement;
  return finding(rule, { verdict, about: judgement.about ?? about, facts, ...at });
}

function unitsNamed(missing: readonly string[], units: readonly Unit[]): UnitId[] {
  const named = new Set(missing.map((field) => field.slice(0, field.indexOf('.'))));
  return units.flatMap(({ id }) => (named.has(id) ? [id] : []));
}

const classes: ReadonlySet<string> = new Set(partClasses);

/** `cooler.heightMm` becomes `cooler-1.heightMm`, for each cooler looked at that does not record it. */
export function qualify(missing: readonly string[], units: readonly Unit[]): string[] {
  const all = missing.flatMap((field) => {
    const dot = field.indexOf('.');
    const head = field.slice(0, dot);
    if (!classes.has(head)) return [field];
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

const verdicts: readonly Finding['verdict'][] = ['does-not-fit', 'cannot-tell', 'fits'];

/**
 * Findings of one rule in the order of their ids, each id once: those that say the same of other units are told
 * together, and of those that differ only the worst is told.
 */
export function settle(findings: Finding[]): readonly Finding[] {
  if (findings.length < 2) return findings;
  const byId = new Map<string, Finding[]>();
  for (const one of findings) {
    const known = byId.get(one.id);
    if (known) known.push(one);
    else byId.set(one.id, [one]);
  }
  return [...byId]
    .map(([id, same]) => ({ key: sortKey(id), told: together(same) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .map(({ told }) => told);
}

/** One finding about all their units. */
export function together(group: readonly Finding[]): Finding {
  const [first] = group as readonly [Finding];
  if (group.length === 1) return first;
  const verdict = verdicts.find((one) => group.some((finding) => finding.verdict === one)) ?? first.verdict;
  const told = group.filter((finding) => finding.verdict === verdict) as [Finding, ...Finding[]];
  return {
    ...told[0],
    about: [...new Set(told.flatMap(({ about }) => about))],
    ...(told[0].missing ? { missing: [...new Set(told.flatMap(({ missing = [] }) => missing))] } : {}),
  };
}

/** Whether two values of facts, or of needs and places, are the same. */
export const isSame = (a: unknown, b: unknown): boolean =>
  a === b ||
  (Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((value, index) => isSame(value, b[index])));

export function sameFacts(a: Facts, b: Facts): boolean {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => isSame(a[key], b[key]));
}
