/** Rows of a table become parts, each checked as its file would be. */
import { stringify } from 'yaml';
import type { Content } from '../../content-types.ts';
import { senseChecks } from '../../parts/checks/index.ts';
import { partSchemas } from '../../parts/classes/index.ts';
import { type Part, type PartClass, partClasses } from '../../parts/part.ts';
import type { Fault } from '../../wording/fault.ts';
import { nearest } from '../content/nearest.ts';
import { partReferences } from '../content/parts.ts';
import { checkReferences, type KnownIds } from '../content/references.ts';
import { checkShape, fieldMeant, shown } from '../content/shape.ts';
import type { Path, Place, YamlFile } from '../content/yaml-file.ts';
import { readCell } from './cells.ts';
import { classShape, shapeAt } from './columns.ts';
import type { Row, Table } from './read-table.ts';

type At = { file: string; line: number; column: number };
type Imported = { path: string; text: string; at: At };

/** What one row says, before it is known whether that makes a part. */
type Said = { row: Row; of: PartClass; yaml: YamlFile; faults: Fault[] };

export function readRows(table: Table, content: Content): { parts: Imported[]; faults: Fault[] } {
  const said = table.rows.map((row) => readRow(table, row));
  const faults = said.flatMap((one) => one.faults);
  const known: KnownIds = {
    part: new Set(),
    source: new Set(content.sources.map(({ id }) => id)),
    lesson: new Set(),
    procedure: new Set(),
    exercise: new Set(),
    rule: new Set(),
  };
  const read: { part: Part; yaml: YamlFile }[] = [];
  for (const { of, yaml, faults: own } of said.flatMap((one) => ('yaml' in one ? [one] : []))) {
    const slips = shapeFaults(yaml, of, own.length === 0 ? read : []);
    // What a cell failed to say is missing for that reason, and told once.
    faults.push(...(own.length === 0 ? slips : slips.filter(({ id }) => id !== 'part/missing-field')));
    faults.push(...checkReferences(yaml, 'part', partReferences, known));
  }
  faults.push(...doubledIds(read, content), ...senseFaults(read, content));
  const parts = read.map(({ part, yaml }) => ({
    path: `content/parts/${part.class}/${part.id}.yaml`,
    text: stringify(part, { lineWidth: 0 }),
    at: { file: table.file, ...yaml.valueAt(['id']) },
  }));
  return { parts, faults };
}

function shapeFaults(yaml: YamlFile, of: PartClass, read: { part: Part; yaml: YamlFile }[]): Fault[] {
  const { value, faults } = checkShape<Part>(yaml, partSchemas[of], { area: 'part', noun: of });
  if (value) read.push({ part: value, yaml });
  return faults;
}

function readRow(table: Table, row: Row): Said | { faults: Fault[] } {
  const faults: Fault[] = [];
  const at = (column: number): At => ({ file: table.file, line: row.row, column: column + 1 });
  const classColumn = table.names.indexOf('class');
  const claimed = row.cells[classColumn] ?? '';
  const of = partClasses.find((partClass) => partClass === claimed);
  if (!of) {
    const expected = nearest(claimed, partClasses) ?? `a class: one of ${partClasses.join(', ')}`;
    const actual = claimed === '' ? 'a row without a class' : shown(claimed);
    return { faults: [{ ...at(Math.max(0, classColumn)), id: 'part/unknown-class', actual, expected }] };
  }
  const shape = classShape(of);
  const places = new Map<string, number>();
  const data: Record<string, unknown> = {};
  for (const [column, name] of table.names.entries()) {
    const cell = row.cells[column] ?? '';
    if (name === '' || cell === '') continue;
    const steps = name.split('.');
    const { at: found, lost, known } = shapeAt(shape, steps);
    if (!found || (found.is !== 'value' && found.is !== 'values')) {
      const step = steps[lost];
      const meant = step === undefined ? undefined : fieldMeant(step, known);
      const expected = meant ? steps.with(lost, meant).join('.') : `a column of the template of ${of}`;
      faults.push({ ...at(column), id: 'part/unknown-field', actual: name, expected });
      continue;
    }
    const { value, fault } = readCell(cell, found, steps.at(-1) ?? name);
    if (fault) faults.push({ ...at(column), id: 'part/wrong-type', ...fault });
    else put(data, steps.map(toStep), value, (path) => places.set(path.join('.'), column));
  }
  const closed = closeLists(data);
  const placeOf = (path: Path): Place => {
    for (let length = path.length; length > 0; length -= 1) {
      const start = path.slice(0, length).join('.');
      const column = places.get(start) ?? [...places].find(([key]) => key.startsWith(`${start}.`))?.[1];
      if (column !== undefined) return { line: row.row, column: column + 1 };
    }
    return { line: row.row, column: 1 };
  };
  return { row, of, faults, yaml: { file: table.file, data: closed, valueAt: placeOf, keyAt: placeOf } };
}

/** Columns count entries from 1, data from 0. */
const toStep = (step: string): string | number => (/^[1-9]\d?$/.test(step) ? Number(step) - 1 : step);

function put(data: Record<string, unknown>, path: Path, value: unknown, mark: (path: Path) => void): void {
  let at: Record<string | number, unknown> = data;
  for (const [n, step] of path.slice(0, -1).entries()) {
    const next = path[n + 1];
    at[step] ??= typeof next === 'number' ? [] : {};
    at = at[step] as Record<string | number, unknown>;
  }
  at[path.at(-1) ?? ''] = value;
  mark(path);
}

/** Entries that were left out between others close up, so that a list has no holes. */
function closeLists(data: unknown): unknown {
  if (Array.isArray(data)) return data.filter((entry) => entry !== undefined).map(closeLists);
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, closeLists(value)]));
}

type ReadPart = { part: Part; yaml: YamlFile };

function doubledIds(read: readonly ReadPart[], content: Content): Fault[] {
  const first = new Map<string, ReadPart>();
  const taken = new Set(content.parts.map(({ id }) => id));
  return read.flatMap((one): Fault[] => {
    const { id } = one.part;
    const before = first.get(id);
    if (!before) first.set(id, one);
    if (!before && !taken.has(id)) return [];
    const fault = {
      file: one.yaml.file,
      ...one.yaml.valueAt(['id']),
      id: 'part/doubled-id',
      actual: before ? `${shown(id)} a second time` : `${shown(id)}, which the catalogue has`,
      expected: 'an id of its own',
    };
    if (!before) return [fault];
    const there = { file: before.yaml.file, ...before.yaml.valueAt(['id']) };
    return [{ ...fault, other: { text: 'the id was first used here', ...there } }];
  });
}

/** Beside the parts there are, as the check of the catalogue will see them. */
function senseFaults(read: readonly ReadPart[], content: Content): Fault[] {
  const parts = [...content.parts, ...read.map(({ part }) => part)];
  return senseChecks.flatMap(({ id, check }) =>
    check(parts).flatMap(({ part, path, actual, expected }): Fault[] => {
      const found = read.find((one) => one.part.id === part);
      if (!found) return [];
      return [{ file: found.yaml.file, ...found.yaml.valueAt(path), id: `part/${id}`, actual, expected }];
    }),
  );
}
