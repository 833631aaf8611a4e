/** Reads a YAML file that holds one thing with an id. */
import type { z } from 'zod';
import { slug } from '../../parts/terms.ts';
import type { Fault } from '../../wording/fault.ts';
import type { ContentFile } from './files.ts';
import { checkShape, type KindOfFile, shown } from './shape.ts';
import { readYaml, type YamlFile } from './yaml-file.ts';

/** `value` is there only when its file has no slip of its own; `yaml` when the file can be read at all. */
export type Read<T> = { from: ContentFile; value?: T; yaml?: YamlFile };

/** The fields of a file, before anything is known of their shape. */
export function readFields(from: ContentFile, { area, noun }: KindOfFile, faults: Fault[]): YamlFile | undefined {
  const { yaml, faults: slips } = readYaml(from.file, from.text);
  faults.push(...slips);
  if (!yaml || isGroup(yaml.data)) return yaml;
  const actual = yaml.data === null ? 'an empty file' : shown(yaml.data);
  faults.push({
    file: from.file,
    line: 1,
    column: 1,
    id: `${area}/no-fields`,
    actual,
    expected: `the fields of a ${noun}`,
  });
  return undefined;
}

export function readThing<T extends { id: string }>(
  from: ContentFile,
  schema: z.ZodType<T>,
  kind: KindOfFile,
  faults: Fault[],
): Read<T> {
  const yaml = readFields(from, kind, faults);
  return yaml ? { from, yaml, ...checkThing(yaml, from, schema, kind, faults) } : { from };
}

/** The shape of the fields, and an id that is the file's name. */
export function checkThing<T>(
  yaml: YamlFile,
  from: ContentFile,
  schema: z.ZodType<T>,
  kind: KindOfFile,
  faults: Fault[],
): { value?: T } {
  const { value, faults: slips } = checkShape(yaml, schema, kind);
  const id = isGroup(yaml.data) ? yaml.data['id'] : undefined;
  if (typeof id === 'string' && slug.safeParse(id).success && id !== from.name) {
    const expected = `${from.name}, as the file is named`;
    slips.push({
      file: from.file,
      ...yaml.valueAt(['id']),
      id: `${kind.area}/id-and-file-name`,
      actual: shown(id),
      expected,
    });
  }
  faults.push(...slips);
  return value !== undefined && slips.length === 0 ? { value } : {};
}

export const isGroup = (data: unknown): data is Record<string, unknown> =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

/** An id is used once among all files of a kind, in whatever folders they lie. */
export function checkDoubledIds(reads: readonly Read<unknown>[], area: string, faults: Fault[]): void {
  const first = new Map<string, Read<unknown>>();
  for (const read of reads) {
    const { from, yaml } = read;
    const before = first.get(from.name);
    if (!before) {
      first.set(from.name, read);
      continue;
    }
    const there = before.yaml?.valueAt(['id']) ?? { line: 1, column: 1 };
    faults.push({
      file: from.file,
      ...(yaml?.valueAt(['id']) ?? { line: 1, column: 1 }),
      id: `${area}/doubled-id`,
      actual: `${shown(from.name)} a second time`,
      expected: 'an id of its own',
      other: { text: 'the id was first used here', file: before.from.file, ...there },
    });
  }
}
