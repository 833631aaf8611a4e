/** Ids that one file uses and another file, or a rule, must have. */
import type { Fault } from '../../wording/fault.ts';
import { nearest } from './nearest.ts';
import { shown } from './shape.ts';
import type { Path, YamlFile } from './yaml-file.ts';

export type Target = 'part' | 'source' | 'lesson' | 'procedure' | 'exercise' | 'rule';
export type KnownIds = Record<Target, ReadonlySet<string>>;

/** Where an id stands: `*` is every entry of a list or every field of a group. */
export type Reference = { path: readonly string[]; target: Target };

const homes: Record<Target, string> = {
  part: 'the id of a part in content/parts',
  source: 'the id of a source in content/sources',
  lesson: 'the id of a lesson in content/lessons, <unit>/<name>',
  procedure: 'the id of a procedure in content/procedures',
  exercise: 'the id of an exercise in content/exercises',
  rule: 'the id of a rule, <area>/<what is compared>',
};

/** What should have stood in the place of an id that is not known. */
export const expectedId = (id: string, target: Target, known: KnownIds): string =>
  nearest(id, known[target]) ?? homes[target];

/** Looks at the data as it stands, so that slips elsewhere in the file hide nothing here. */
export function checkReferences(
  yaml: YamlFile,
  area: string,
  references: readonly Reference[],
  known: KnownIds,
): Fault[] {
  return references.flatMap(({ path, target }) =>
    entriesAt(yaml.data, path).flatMap(({ at, value }): Fault[] => {
      if (typeof value !== 'string' || known[target].has(value)) return [];
      const expected = expectedId(value, target, known);
      return [
        { file: yaml.file, ...yaml.valueAt(at), id: `${area}/unknown-${target}`, actual: shown(value), expected },
      ];
    }),
  );
}

/** Every value that stands at the path, each with its own. */
export function entriesAt(data: unknown, path: readonly string[], at: Path = []): { at: Path; value: unknown }[] {
  const [step, ...rest] = path;
  if (step === undefined) return [{ at, value: data }];
  if (typeof data !== 'object' || data === null) return [];
  if (step === '*') {
    const steps = Array.isArray(data) ? [...data.keys()] : Object.keys(data);
    return steps.flatMap((one) => entriesAt((data as Record<string | number, unknown>)[one], rest, [...at, one]));
  }
  return Object.hasOwn(data, step) ? entriesAt((data as Record<string, unknown>)[step], rest, [...at, step]) : [];
}
