/** Checks the data of a file against a schema; every slip becomes a fault at the smallest place that shows it. */
import { z } from 'zod';
import type { Fault } from '../../wording/fault.ts';
import { either } from '../../wording/phrases.ts';
import { nearest } from './nearest.ts';
import type { Path, Place, YamlFile } from './yaml-file.ts';

/** What kind of file it is: the first part of a fault's id, and what a person calls the thing in it. */
export type KindOfFile = { area: string; noun: string };

/** `value` is there only when nothing is amiss. */
export function checkShape<T>(
  yaml: YamlFile,
  schema: z.ZodType<T>,
  { area, noun }: KindOfFile,
): { value?: T; faults: Fault[] } {
  const result = schema.safeParse(yaml.data);
  if (result.success) return { value: result.data, faults: [] };
  const fault = (place: Place, id: string, actual: string, expected: string): Fault => ({
    file: yaml.file,
    ...place,
    id: `${area}/${id}`,
    actual,
    expected,
  });
  return {
    faults: flatten(result.error.issues, yaml.data).flatMap((issue): Fault[] => {
      const path = issue.path.map((step) => (typeof step === 'number' ? step : String(step)));
      if (issue.code === 'unrecognized_keys') {
        const known = fieldsAt(schema, path);
        const of = groupName(path, noun);
        return issue.keys.map((key) =>
          fault(yaml.keyAt([...path, key]), 'unknown-field', key, fieldMeant(key, known) ?? `a field of ${of}`),
        );
      }
      const { at, isOptional } = schemaAt(schema, path);
      const expected = inWordsOf(at, lastField(path) ?? '');
      const { value, isThere } = valueAt(yaml.data, path);
      if (!isThere) {
        const field = String(path.at(-1));
        const of = groupName(path.slice(0, -1), noun);
        return [
          fault(yaml.valueAt(path.slice(0, -1)), 'missing-field', `${of} without ${field}`, `${field}: ${expected}`),
        ];
      }
      const place = yaml.valueAt(path);
      const actual = shown(value);
      const isMeasure = isOptional && unwrap(at) instanceof z.ZodNumber;
      if (isMeasure && (value === 0 || value === null)) {
        return [fault(place, 'empty-measure', actual, `${expected}; leave it out when it is not known`)];
      }
      const [id, wanted] = slipOf(issue, expected, value);
      return [fault(place, id, actual, wanted)];
    }),
  };
}

/** `actual` as it is printed in a fault. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'string') return JSON.stringify(value.length > 60 ? `${value.slice(0, 59)}…` : value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  return typeof value === 'object' ? 'a group of fields' : String(value);
}

type Issue = z.core.$ZodIssue;

/** Of a choice between shapes only the branch that was meant is kept: the one that fails deeper than its root. */
function flatten(issues: readonly Issue[], data: unknown, before: Path = []): Issue[] {
  return issues.flatMap((issue): Issue[] => {
    const path = [...before, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
    if (issue.code === 'invalid_union' && valueAt(data, path).isThere) {
      const meant = issue.errors.filter((branch) => branch.every((inner) => inner.path.length > 0));
      if (meant.length === 1 && meant[0]) return flatten(meant[0], data, path);
    }
    return [{ ...issue, path }];
  });
}

function slipOf(issue: Issue, expected: string, value: unknown): [id: string, expected: string] {
  switch (issue.code) {
    case 'too_small':
      if (issue.origin === 'string') return ['missing-words', expected];
      if (issue.origin === 'array') return ['too-few', `${expected} of ${issue.minimum} or more`];
      return [
        'out-of-range',
        `${expected}, ${issue.inclusive ? `${issue.minimum} or more` : `more than ${issue.minimum}`}`,
      ];
    case 'too_big':
      return ['out-of-range', `${expected}, ${issue.maximum} or less`];
    case 'not_multiple_of':
      return ['out-of-range', `${expected} in steps of ${issue.divisor}`];
    case 'invalid_union':
      return [typeof value === 'object' ? 'wrong-type' : 'unknown-word', expected];
    case 'invalid_value':
      return ['unknown-word', expected];
    case 'invalid_format':
      return ['wrong-form', expected];
    default:
      if (typeof value === 'number' && expected.endsWith('words')) return ['wrong-type', `"${value}", in quotes`];
      return ['wrong-type', expected];
  }
}

function unwrap(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional) return unwrap(schema.unwrap());
  return schema instanceof z.ZodNullable ? unwrap(schema.unwrap()) : schema;
}

/** The schema of the value at a path, as far as the path leads. */
function schemaAt(schema: z.core.$ZodType, path: Path): { at: z.core.$ZodType; isOptional: boolean } {
  let at = schema;
  for (const step of path) {
    const group = unwrap(at);
    let next: z.core.$ZodType | undefined;
    if (group instanceof z.ZodObject) next = group.shape[step];
    else if (group instanceof z.ZodArray) next = group.element;
    else if (group instanceof z.ZodRecord) next = group.valueType;
    else if (group instanceof z.ZodUnion) {
      next = group.options.flatMap((one) => (one instanceof z.ZodObject ? [one.shape[step]] : [])).find(Boolean);
    }
    if (!next) break;
    at = next;
  }
  return { at, isOptional: at instanceof z.ZodOptional || at instanceof z.ZodExactOptional };
}

/** Names of the fields that may stand in the group at a path. */
export function fieldsAt(schema: z.core.$ZodType, path: Path): string[] {
  const group = unwrap(schemaAt(schema, path).at);
  if (group instanceof z.ZodObject) return Object.keys(group.shape);
  if (!(group instanceof z.ZodUnion)) return [];
  return group.options.flatMap((one) => (one instanceof z.ZodObject ? Object.keys(one.shape) : []));
}

const lastField = (path: Path) => path.findLast((step) => typeof step === 'string');

const groupName = (path: Path, noun: string) =>
  typeof path.at(-1) === 'number' ? `an entry of ${lastField(path)}` : String(path.at(-1) ?? noun);

function valueAt(data: unknown, path: Path): { value: unknown; isThere: boolean } {
  let value = data;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) {
      return { value: undefined, isThere: false };
    }
    value = (value as Record<string, unknown>)[step];
  }
  return { value, isThere: true };
}

/** Endings of names of fields, and the unit each stands for. */
const units: readonly [ending: string, words: string][] = [
  ['Mm', 'millimetres'],
  ['M3h', 'cubic metres an hour'],
  ['Mts', 'millions of transfers a second'],
  ['Gb', 'gigabytes'],
  ['Mb', 'megabytes'],
  ['Kb', 'kilobytes'],
  ['Bits', 'bits'],
  ['Khz', 'kilohertz'],
  ['Mhz', 'megahertz'],
  ['Ns', 'nanoseconds'],
  ['Db', 'decibels'],
  ['Volts', 'volts'],
  ['Permille', 'tenths of a percent'],
  ['Px', 'pixels'],
  ['Hz', 'hertz'],
  ['Inch', 'inches'],
  ['Cents', 'euro cents'],
  ['W', 'watts'],
];
const wholeNames: Record<string, string> = {
  milliamps: 'milliamps',
  milliwatts: 'milliwatts',
  idleMilliwatts: 'milliwatts',
  spinUpMilliwatts: 'milliwatts',
  millivolts: 'millivolts',
  milliamps5v: 'milliamps',
  milliamps12v: 'milliamps',
  nanoseconds: 'nanoseconds',
  grams: 'grams',
  carriesGrams: 'grams',
  megabits: 'megabits a second',
  kilobits: 'kilobits a second',
  minutes: 'minutes',
};

/** A field whose unit was forgotten, or one written nearly so. */
export function fieldMeant(key: string, known: readonly string[]): string | undefined {
  const withUnit = known.find((field) =>
    units.some(([ending]) => field.toLowerCase() === `${key}${ending}`.toLowerCase()),
  );
  return withUnit ?? nearest(key, known);
}

/** What may stand in a field, in words. */
export function inWordsOf(schema: z.core.$ZodType, field: string): string {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional) return inWordsOf(schema.unwrap(), field);
  if (schema instanceof z.ZodNullable) return `${inWordsOf(schema.unwrap(), field)}, or null`;
  if (schema instanceof z.ZodType && schema.description) return schema.description;
  if (schema instanceof z.ZodNumber) {
    const number = schema.isInt ? 'a whole number' : 'a number';
    const unit = units.find(([ending]) => field.endsWith(ending))?.[1] ?? wholeNames[field];
    return unit ? `${number} in ${unit}` : number;
  }
  if (schema instanceof z.ZodISODate) return 'a date such as 2026-11-17';
  if (schema instanceof z.ZodString)
    return schema.format === 'regex' ? 'small letters, figures and dashes' : 'some words';
  if (schema instanceof z.ZodBoolean) return 'true or false';
  if (schema instanceof z.ZodEnum || schema instanceof z.ZodLiteral || schema instanceof z.ZodUnion)
    return either(choicesOf(schema, field));
  if (schema instanceof z.ZodArray) return 'a list';
  if (schema instanceof z.ZodObject) return `a group with ${Object.keys(schema.shape).join(', ')}`;
  return 'a group of fields';
}

function choicesOf(schema: z.core.$ZodType, field: string): string[] {
  if (schema instanceof z.ZodEnum) return schema.options.map(String);
  if (schema instanceof z.ZodLiteral) return [...schema.values].map(String);
  return schema instanceof z.ZodUnion
    ? schema.options.flatMap((one) => choicesOf(one, field))
    : [inWordsOf(schema, field)];
}
