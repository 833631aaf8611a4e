/** Reads part files: the class by its folder and its field, then everything the class may have. */

import type { z } from 'zod';
import { senseChecks } from '../../parts/checks/index.ts';
import { partSchemas } from '../../parts/classes/index.ts';
import { commonFields } from '../../parts/common.ts';
import { type Part, type PartClass, partClasses } from '../../parts/part.ts';
import type { Fault } from '../../wording/fault.ts';
import type { ContentFile } from './files.ts';
import { nearest } from './nearest.ts';
import type { Reference } from './references.ts';
import { fieldMeant, fieldsAt, shown } from './shape.ts';
import { checkThing, isGroup, type Read, readFields } from './things.ts';
import type { YamlFile } from './yaml-file.ts';

export const partReferences: readonly Reference[] = [
  { path: ['source'], target: 'source' },
  { path: ['sources', '*'], target: 'source' },
];

const isClass = (name: unknown): name is PartClass => partClasses.some((one) => one === name);
const classMeant = (name: string) => nearest(name, partClasses) ?? `one of ${partClasses.join(', ')}`;

export function readPart(from: ContentFile, faults: Fault[]): Read<Part> {
  const yaml = readFields(from, { area: 'part', noun: isClass(from.folder) ? from.folder : 'part' }, faults);
  if (!yaml) return { from };
  const claimed = isGroup(yaml.data) ? yaml.data['class'] : undefined;
  const classFault = (id: string, expected: string) =>
    faults.push({ file: from.file, ...yaml.valueAt(['class']), id: `part/${id}`, actual: shown(claimed), expected });

  const isSpelt = claimed === undefined || isClass(claimed);
  if (!isSpelt) classFault('unknown-class', typeof claimed === 'string' ? classMeant(claimed) : classMeant(''));
  else if (isClass(claimed) && isClass(from.folder) && claimed !== from.folder) {
    classFault('class-and-folder', `${from.folder}, as the folder is named`);
  }
  const of = isClass(claimed) ? claimed : from.folder;
  if (!isClass(of)) return { from, yaml };

  const slips: Fault[] = [];
  const schema: z.ZodType<Part> = partSchemas[of];
  const { value } = checkThing(yaml, from, schema, { area: 'part', noun: of }, slips);
  // An unknown class is told once, with the classes there are.
  const told = slips.filter((slip) => isSpelt || slip.id !== 'part/unknown-word' || slip.actual !== shown(claimed));
  told.push(...checkSourcesFields(yaml, of));
  faults.push(...told);
  return value && told.length === 0 ? { from, yaml, value } : { from, yaml };
}

/** A folder that is no class is told once, however many files it holds. */
export function checkClassFolders(files: readonly ContentFile[], faults: Fault[]): void {
  const folders = new Set(files.map(({ folder }) => folder).filter((folder) => !isClass(folder)));
  for (const folder of folders) {
    const file = `content/parts/${folder}`;
    faults.push({ file, line: 1, column: 1, id: 'part/unknown-class', actual: folder, expected: classMeant(folder) });
  }
}

/** Parts whose files are of the right shape, and make no sense beside each other or in themselves. */
export function checkSense(reads: readonly Read<Part>[], faults: Fault[]): void {
  const parts = reads.flatMap(({ value }) => (value ? [value] : []));
  const readOf = new Map(reads.map((read) => [read.value?.id, read]));
  for (const { id, check } of senseChecks) {
    for (const { part, path, actual, expected } of check(parts)) {
      const { from, yaml } = readOf.get(part) ?? {};
      if (from && yaml) faults.push({ file: from.file, ...yaml.valueAt(path), id: `part/${id}`, actual, expected });
    }
  }
}

/** `sources` names a source for single fields of the class. */
function checkSourcesFields(yaml: YamlFile, of: PartClass): Fault[] {
  const sources = isGroup(yaml.data) ? yaml.data['sources'] : undefined;
  if (!isGroup(sources)) return [];
  const known = fieldsAt(partSchemas[of], []).filter(
    (field) => field !== 'class' && !Object.hasOwn(commonFields, field),
  );
  const citable = [...known, 'priceCents'];
  return Object.keys(sources)
    .filter((field) => !citable.includes(field))
    .map((field) => ({
      file: yaml.file,
      ...yaml.keyAt(['sources', field]),
      id: 'part/unknown-field',
      actual: field,
      expected: fieldMeant(field, citable) ?? `a field of ${of}`,
    }));
}
